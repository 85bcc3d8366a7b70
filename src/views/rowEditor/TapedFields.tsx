import type { Side } from '../../physics/placement/placeMembers';
import type { ProjectPlacement } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { DegreesField, LengthField } from './smallFields';
import type { RowEdit } from './useRowEdit';

type Taped = Extract<ProjectPlacement, { kind: 'taped' }>;

type Orientation = 'upright' | 'foreAndAft' | 'athwart' | 'leaning';

const orientationChoices: readonly Choice<Orientation>[] = [
  { value: 'upright', label: 'upright' },
  { value: 'foreAndAft', label: 'fore and aft' },
  { value: 'athwart', label: 'athwart' },
  { value: 'leaning', label: 'leaning, as typed' },
];

const leans: Readonly<Record<Exclude<Orientation, 'leaning'>, Pick<Taped, 'leanAftDeg' | 'leanOutDeg'>>> = {
  upright: { leanAftDeg: 0, leanOutDeg: 0 },
  foreAndAft: { leanAftDeg: 90, leanOutDeg: 0 },
  athwart: { leanAftDeg: 0, leanOutDeg: 90 },
};

function orientationOf({ leanAftDeg, leanOutDeg }: Taped): Orientation {
  const plain = (['upright', 'foreAndAft', 'athwart'] as const).find(
    (each) => leans[each].leanAftDeg === leanAftDeg && leans[each].leanOutDeg === leanOutDeg,
  );
  return plain ?? 'leaning';
}

const sideChoices: readonly Choice<Side>[] = [
  { value: 'centreline', label: 'centreline' },
  { value: 'port', label: 'port' },
  { value: 'starboard', label: 'starboard' },
];

const fromChoices: readonly Choice<Taped['athwart']['from']>[] = [
  { value: 'centreline', label: 'out from the centreline' },
  { value: 'deck-edge', label: 'in from the deck edge' },
];

/** Longest taped member, m. */
const lengthRange = { fromSi: 0, toSi: 300 };

/** A place as it is taped on a dock: from the stem, from the deck edge or the centreline, above the deck. */
export function TapedFields({ row, placement }: { readonly row: RowEdit; readonly placement: Taped }) {
  const set = (field: string, words: string, part: Partial<Taped>): void => {
    row.patch(`placement.${field}`, words, { placement: { kind: 'taped', ...part } });
  };
  const isLastShown = placement.row !== null;
  const first = isLastShown ? 'First one, ' : '';
  return (
    <>
      <ChoiceField
        label="Orientation"
        choices={orientationChoices}
        value={orientationOf(placement)}
        onCommit={(orientation) => {
          if (orientation !== 'leaning') set('orientation', 'orientation', leans[orientation]);
        }}
        {...row.at('placement.orientation')}
      />
      <LengthField
        label="Length, foot to head"
        valueM={placement.lengthM}
        range={lengthRange}
        onCommit={(lengthM) => {
          set('lengthM', 'length', { lengthM });
        }}
        {...row.at('placement.lengthM')}
      />
      <LengthField
        label="Foot above the deck"
        valueM={placement.aboveDeckM}
        onCommit={(aboveDeckM) => {
          set('aboveDeckM', 'height', { aboveDeckM });
        }}
        {...row.at('placement.aboveDeckM')}
      />
      <LengthField
        label={`${first}${first === '' ? 'A' : 'a'}ft of the stem`}
        valueM={placement.aftOfStemM}
        onCommit={(aftOfStemM) => {
          set('aftOfStemM', 'place', { aftOfStemM });
        }}
        {...row.at('placement.aftOfStemM')}
      />
      <ChoiceField
        label="Side"
        choices={sideChoices}
        value={placement.side}
        onCommit={(side) => {
          set('side', 'side', { side });
        }}
        {...row.at('placement.side')}
      />
      <ChoiceField
        label="Athwart, taped"
        choices={fromChoices}
        value={placement.athwart.from}
        onCommit={(from) => {
          set('from', 'place', { athwart: { ...placement.athwart, from } });
        }}
        {...row.at('placement.from')}
      />
      <LengthField
        label={placement.athwart.from === 'centreline' ? 'Out by' : 'In by'}
        valueM={placement.athwart.inboardOrOutM}
        onCommit={(inboardOrOutM) => {
          set('athwart', 'place', { athwart: { ...placement.athwart, inboardOrOutM } });
        }}
        {...row.at('placement.athwart')}
      />
      <DegreesField
        label="Lean aft"
        valueDeg={placement.leanAftDeg}
        mostDeg={180}
        onCommit={(leanAftDeg) => {
          set('leanAftDeg', 'lean', { leanAftDeg });
        }}
        {...row.at('placement.leanAftDeg')}
      />
      <DegreesField
        label="Lean out"
        valueDeg={placement.leanOutDeg}
        mostDeg={180}
        onCommit={(leanOutDeg) => {
          set('leanOutDeg', 'lean', { leanOutDeg });
        }}
        {...row.at('placement.leanOutDeg')}
      />
    </>
  );
}

/** Where the last one of a taped row stands. */
export function TapedLastFields({ row, placement }: { readonly row: RowEdit; readonly placement: Taped }) {
  const { row: members, athwart } = placement;
  if (members === null) return null;
  const set = (field: string, part: Partial<typeof members>): void => {
    row.patch(`placement.row.${field}`, 'last one’s place', {
      placement: { kind: 'taped', row: { ...members, ...part } },
    });
  };
  return (
    <>
      <LengthField
        label="Last one, aft of the stem"
        valueM={members.lastAftOfStemM}
        onCommit={(lastAftOfStemM) => {
          set('lastAftOfStemM', { lastAftOfStemM });
        }}
        {...row.at('placement.row.lastAftOfStemM')}
      />
      <LengthField
        label={athwart.from === 'centreline' ? 'Last one, out by' : 'Last one, in by'}
        valueM={members.lastAthwartM}
        onCommit={(lastAthwartM) => {
          set('lastAthwartM', { lastAthwartM });
        }}
        {...row.at('placement.row.lastAthwartM')}
      />
    </>
  );
}
