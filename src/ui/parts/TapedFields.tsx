import type { Side } from '../../physics/placement/placeMembers';
import type { ProjectPlacement } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import type { PartFields } from './partFields';
import { DegreesField, LengthField } from './smallFields';

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
export function TapedFields({ value, at, onChange }: PartFields<Taped>) {
  const { athwart, row } = value;
  const set = (field: string, words: string, part: Partial<Taped>): void => {
    onChange(field, words, { ...value, ...part });
  };
  const first = row === null ? '' : 'First one, ';
  return (
    <>
      <ChoiceField
        label="Orientation"
        choices={orientationChoices}
        value={orientationOf(value)}
        onCommit={(orientation) => {
          if (orientation !== 'leaning') set('orientation', 'orientation', leans[orientation]);
        }}
        {...at('orientation')}
      />
      <LengthField
        label="Length, foot to head"
        valueM={value.lengthM}
        range={lengthRange}
        onCommit={(lengthM) => {
          set('lengthM', 'length', { lengthM });
        }}
        {...at('lengthM')}
      />
      <LengthField
        label="Foot above the deck"
        valueM={value.aboveDeckM}
        onCommit={(aboveDeckM) => {
          set('aboveDeckM', 'height', { aboveDeckM });
        }}
        {...at('aboveDeckM')}
      />
      <LengthField
        label={`${first}${first === '' ? 'A' : 'a'}ft of the stem`}
        valueM={value.aftOfStemM}
        onCommit={(aftOfStemM) => {
          set('aftOfStemM', 'place', { aftOfStemM });
        }}
        {...at('aftOfStemM')}
      />
      <ChoiceField
        label="Side"
        choices={sideChoices}
        value={value.side}
        onCommit={(side) => {
          set('side', 'side', { side });
        }}
        {...at('side')}
      />
      <ChoiceField
        label="Athwart, taped"
        choices={fromChoices}
        value={athwart.from}
        onCommit={(from) => {
          set('from', 'place', { athwart: { ...athwart, from } });
        }}
        {...at('from')}
      />
      <LengthField
        label={athwart.from === 'centreline' ? 'Out by' : 'In by'}
        valueM={athwart.inboardOrOutM}
        onCommit={(inboardOrOutM) => {
          set('athwart', 'place', { athwart: { ...athwart, inboardOrOutM } });
        }}
        {...at('athwart')}
      />
      <DegreesField
        label="Lean aft"
        valueDeg={value.leanAftDeg}
        mostDeg={180}
        onCommit={(leanAftDeg) => {
          set('leanAftDeg', 'lean', { leanAftDeg });
        }}
        {...at('leanAftDeg')}
      />
      <DegreesField
        label="Lean out"
        valueDeg={value.leanOutDeg}
        mostDeg={180}
        onCommit={(leanOutDeg) => {
          set('leanOutDeg', 'lean', { leanOutDeg });
        }}
        {...at('leanOutDeg')}
      />
    </>
  );
}

/** Where the last one of a taped row stands. */
export function TapedLastFields({ value, at, onChange }: PartFields<Taped>) {
  const { row, athwart } = value;
  if (row === null) return null;
  const set = (field: string, part: Partial<typeof row>): void => {
    onChange(field, 'last one’s place', { ...value, row: { ...row, ...part } });
  };
  return (
    <>
      <LengthField
        label="Last one, aft of the stem"
        valueM={row.lastAftOfStemM}
        onCommit={(lastAftOfStemM) => {
          set('row.lastAftOfStemM', { lastAftOfStemM });
        }}
        {...at('row.lastAftOfStemM')}
      />
      <LengthField
        label={athwart.from === 'centreline' ? 'Last one, out by' : 'Last one, in by'}
        valueM={row.lastAthwartM}
        onCommit={(lastAthwartM) => {
          set('row.lastAthwartM', { lastAthwartM });
        }}
        {...at('row.lastAthwartM')}
      />
    </>
  );
}
