import type { ProjectPlacement } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { NumberField } from '../../ui/fields/NumberField';
import { QuantityField } from '../../ui/fields/QuantityField';
import { fromSi, toSi } from '../../units/convert';
import type { ChangeOf } from './ChangeFields';
import { placeRange, PointFields } from './PointFields';
import type { ItemEditor } from './usePlanEdits';

interface PlacementFieldsProps {
  readonly change: ChangeOf<'moved'>;
  readonly editor: ItemEditor;
}

type EndPoints = Extract<ProjectPlacement, { kind: 'endPoints' }>;
type Taped = Extract<ProjectPlacement, { kind: 'taped' }>;

/** Where the fitting goes, in the way in which it was placed: by its end points, or as taped. */
export function PlacementFields({ change, editor }: PlacementFieldsProps) {
  const { placement } = change;
  return (
    <>
      {placement.kind === 'taped' ? (
        <TapedFields placement={placement} editor={editor} />
      ) : (
        <EndPointFields placement={placement} editor={editor} />
      )}
      <CheckField
        key={`${editor.key}.pair`}
        label="One on each side"
        value={placement.pair}
        error={editor.errorAt('change.placement.pair')}
        onCommit={(pair) => {
          setPlacement(editor, 'pair', { ...placement, pair });
        }}
        onDone={editor.done}
      />
    </>
  );
}

function setPlacement(editor: ItemEditor, part: string, placement: ProjectPlacement): void {
  editor.patch(`change.placement.${part}`, 'place', { change: { kind: 'moved', placement } });
}

interface EndPointFieldsProps {
  readonly placement: EndPoints;
  readonly editor: ItemEditor;
}

function EndPointFields({ placement, editor }: EndPointFieldsProps) {
  const { start, end, row } = placement;
  const field = (
    part: string,
    label: string,
    value: EndPoints['start'],
    put: (point: EndPoints['start']) => EndPoints,
  ) => (
    <PointFields
      label={label}
      part={`change.placement.${part}`}
      value={value}
      editor={editor}
      onCommit={(point) => {
        setPlacement(editor, part, put(point));
      }}
    />
  );
  return (
    <>
      {field('start', 'Start, from amidships in the waterplane', start, (point) => ({
        ...placement,
        start: point,
      }))}
      {field('end', 'End', end, (point) => ({ ...placement, end: point }))}
      {row !== null && (
        <>
          <CountField
            count={row.count}
            editor={editor}
            onCount={(count) => ({ ...placement, row: { ...row, count } })}
          />
          {field('row.lastStart', 'Start of the last', row.lastStart, (lastStart) => ({
            ...placement,
            row: { ...row, lastStart },
          }))}
          {field('row.lastEnd', 'End of the last', row.lastEnd, (lastEnd) => ({
            ...placement,
            row: { ...row, lastEnd },
          }))}
        </>
      )}
    </>
  );
}

interface CountFieldProps {
  readonly count: number;
  readonly editor: ItemEditor;
  readonly onCount: (count: number) => ProjectPlacement;
}

function CountField({ count, editor, onCount }: CountFieldProps) {
  return (
    <NumberField
      key={`${editor.key}.count`}
      label="How many in the row"
      isWhole
      range={{ fromSi: 2, toSi: 500 }}
      valueSi={count}
      error={editor.errorAt('change.placement.row.count')}
      onCommit={(next) => {
        setPlacement(editor, 'row.count', onCount(next));
      }}
      onDone={editor.done}
    />
  );
}

const sides = [
  { value: 'centreline', label: 'on the centreline' },
  { value: 'port', label: 'port' },
  { value: 'starboard', label: 'starboard' },
] as const;

const athwartFrom = [
  { value: 'centreline', label: 'the centreline' },
  { value: 'deck-edge', label: 'the deck edge' },
] as const;

interface TapedFieldsProps {
  readonly placement: Taped;
  readonly editor: ItemEditor;
}

function TapedFields({ placement, editor }: TapedFieldsProps) {
  const { athwart, row } = placement;
  const set = (part: string, next: Taped): void => {
    setPlacement(editor, part, next);
  };
  const length = (
    part: string,
    label: string,
    valueM: number,
    put: (m: number) => Taped,
    isLength = false,
  ) => (
    <QuantityField
      key={`${editor.key}.${part}`}
      label={label}
      dimension="length"
      unit="m"
      range={isLength ? { fromSi: 0, toSi: 300 } : placeRange}
      valueSi={valueM}
      error={editor.errorAt(`change.placement.${part}`)}
      onCommit={(m) => {
        set(part, put(m));
      }}
      onDone={editor.done}
    />
  );
  const lean = (part: 'leanAftDeg' | 'leanOutDeg', label: string) => (
    <QuantityField
      key={`${editor.key}.${part}`}
      label={label}
      dimension="angle"
      unit="deg"
      range={{ fromSi: -Math.PI, toSi: Math.PI }}
      valueSi={toSi(placement[part], 'deg')}
      error={editor.errorAt(`change.placement.${part}`)}
      onCommit={(angleRad) => {
        set(part, { ...placement, [part]: fromSi(angleRad, 'deg') });
      }}
      onDone={editor.done}
    />
  );
  return (
    <>
      {length('aftOfStemM', 'Aft of the stem', placement.aftOfStemM, (aftOfStemM) => ({
        ...placement,
        aftOfStemM,
      }))}
      <ChoiceField
        key={`${editor.key}.side`}
        label="Side"
        value={placement.side}
        choices={sides}
        error={editor.errorAt('change.placement.side')}
        onCommit={(side) => {
          set('side', { ...placement, side });
        }}
      />
      <ChoiceField
        key={`${editor.key}.from`}
        label="Athwart, from"
        value={athwart.from}
        choices={athwartFrom}
        onCommit={(from) => {
          set('athwart.from', { ...placement, athwart: { ...athwart, from } });
        }}
      />
      {length('athwart.inboardOrOutM', 'Athwart', athwart.inboardOrOutM, (inboardOrOutM) => ({
        ...placement,
        athwart: { ...athwart, inboardOrOutM },
      }))}
      {length('aboveDeckM', 'Above the deck', placement.aboveDeckM, (aboveDeckM) => ({
        ...placement,
        aboveDeckM,
      }))}
      {length('lengthM', 'Length', placement.lengthM, (lengthM) => ({ ...placement, lengthM }), true)}
      {lean('leanAftDeg', 'Leans aft')}
      {lean('leanOutDeg', 'Leans out')}
      {row !== null && (
        <>
          <CountField
            count={row.count}
            editor={editor}
            onCount={(count) => ({ ...placement, row: { ...row, count } })}
          />
          {length(
            'row.lastAftOfStemM',
            'The last: aft of the stem',
            row.lastAftOfStemM,
            (lastAftOfStemM) => ({
              ...placement,
              row: { ...row, lastAftOfStemM },
            }),
          )}
          {length('row.lastAthwartM', 'The last: athwart', row.lastAthwartM, (lastAthwartM) => ({
            ...placement,
            row: { ...row, lastAthwartM },
          }))}
        </>
      )}
    </>
  );
}
