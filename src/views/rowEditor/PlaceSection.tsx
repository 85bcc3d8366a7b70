import { useRef } from 'react';
import { changeFitting } from '../../project/edit/fittingEdits';
import { changePlacementKind, setRowCount } from '../../project/edit/placementEdits';
import type { ProjectPlacement } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { NumberField } from '../../ui/fields/NumberField';
import { Section } from './Section';
import { BasisField, PointField } from './smallFields';
import { TapedFields, TapedLastFields } from './TapedFields';
import type { RowEdit } from './useRowEdit';

type EndPoints = Extract<ProjectPlacement, { kind: 'endPoints' }>;

const kindChoices: readonly Choice<ProjectPlacement['kind']>[] = [
  { value: 'taped', label: 'as taped on deck' },
  { value: 'endPoints', label: 'by its end points' },
];

/** Most members of a row. */
const countRange = { fromSi: 1, toSi: 500 };

/** How many there are, which way they stand, and where. */
export function PlaceSection({ row }: { readonly row: RowEdit }) {
  const { id, placement } = row.fitting;
  const patch = (
    field: string,
    words: string,
    part: Partial<Pick<ProjectPlacement, 'basis' | 'pair'>>,
  ): void => {
    row.patch(`placement.${field}`, words, { placement: { kind: placement.kind, ...part } });
  };
  // Typing 12 over 14 passes through 1, which is no row: where the last one stood is kept for the 12.
  const rowBefore = useRef<ProjectPlacement | null>(null);
  const setCount = (count: number): void => {
    if (count === 1 && placement.row !== null) rowBefore.current = placement;
    const kept = rowBefore.current;
    row.run('placement.count', 'count', (project) =>
      count > 1 && placement.row === null && kept?.kind === placement.kind
        ? changeFitting(project, id, (fitting) => ({
            ...fitting,
            placement: withRow(placement, kept, count),
          }))
        : setRowCount(project, id, count),
    );
  };
  return (
    <Section head="Count and place">
      <NumberField
        label="How many in a row"
        isWhole
        range={countRange}
        valueSi={placement.row?.count ?? 1}
        onCommit={setCount}
        {...row.at('placement.count')}
      />
      <CheckField
        label="The same on the other side"
        value={placement.pair}
        onCommit={(pair) => {
          patch('pair', 'pair', { pair });
        }}
        {...row.at('placement.pair')}
      />
      <ChoiceField
        label="Place given"
        choices={kindChoices}
        value={placement.kind}
        onCommit={(kind) => {
          row.run('placement', 'way of giving the place', (project) =>
            changePlacementKind(project, id, kind),
          );
        }}
        {...row.at('placement')}
      />
      {placement.kind === 'taped' ? (
        <>
          <TapedFields row={row} placement={placement} />
          <TapedLastFields row={row} placement={placement} />
        </>
      ) : (
        <EndPointFields row={row} placement={placement} />
      )}
      <BasisField
        label="Place obtained"
        value={placement.basis}
        onCommit={(basis) => {
          patch('basis', 'basis of the place', { basis });
        }}
        {...row.at('placement.basis')}
      />
    </Section>
  );
}

/** The placement with the row that another of its kind had. */
function withRow(placement: ProjectPlacement, kept: ProjectPlacement, count: number): ProjectPlacement {
  if (placement.kind === 'taped' && kept.kind === 'taped' && kept.row !== null) {
    return { ...placement, row: { ...kept.row, count } };
  }
  if (placement.kind === 'endPoints' && kept.kind === 'endPoints' && kept.row !== null) {
    return { ...placement, row: { ...kept.row, count } };
  }
  return placement;
}

function EndPointFields({ row, placement }: { readonly row: RowEdit; readonly placement: EndPoints }) {
  const { row: members } = placement;
  const first = members === null ? '' : 'First one, ';
  return (
    <>
      <p className="fine">
        Points in metres: x forward of amidships, y to port of the centreline, z above the waterplane.
      </p>
      {(['start', 'end'] as const).map((key) => (
        <PointField
          key={key}
          label={`${first}${first === '' ? endNames[key] : endNames[key].toLowerCase()}`}
          value={placement[key]}
          onCommit={(point) => {
            row.patch(`placement.${key}`, 'place', { placement: { kind: 'endPoints', [key]: point } });
          }}
          {...row.at(`placement.${key}`)}
        />
      ))}
      {members !== null &&
        (['lastStart', 'lastEnd'] as const).map((key) => (
          <PointField
            key={key}
            label={key === 'lastStart' ? 'Last one, start' : 'Last one, end'}
            value={members[key]}
            onCommit={(point) => {
              row.patch(`placement.row.${key}`, 'last one’s place', {
                placement: { kind: 'endPoints', row: { ...members, [key]: point } },
              });
            }}
            {...row.at(`placement.row.${key}`)}
          />
        ))}
    </>
  );
}

const endNames = { start: 'Start', end: 'End' } as const;
