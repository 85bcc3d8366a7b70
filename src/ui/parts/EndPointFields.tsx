import type { ProjectPlacement } from '../../project/file/schema';
import type { PartFields } from './partFields';
import { PointField } from './smallFields';

type EndPoints = Extract<ProjectPlacement, { kind: 'endPoints' }>;

/** A place by its two end points in the boat's frame; a row has those of its first and its last. */
export function EndPointFields({ value, at, onChange }: PartFields<EndPoints>) {
  const { row } = value;
  const labels =
    row === null ? { start: 'Start', end: 'End' } : { start: 'First one, start', end: 'First one, end' };
  return (
    <>
      <p className="fine">
        Points: x forward of amidships, y to port of the centreline, z above the waterplane.
      </p>
      {(['start', 'end'] as const).map((key) => (
        <PointField
          key={key}
          label={labels[key]}
          value={value[key]}
          onCommit={(point) => {
            onChange(key, 'place', { ...value, [key]: point });
          }}
          {...at(key)}
        />
      ))}
      {row !== null &&
        (['lastStart', 'lastEnd'] as const).map((key) => (
          <PointField
            key={key}
            label={key === 'lastStart' ? 'Last one, start' : 'Last one, end'}
            value={row[key]}
            onCommit={(point) => {
              onChange(`row.${key}`, 'last one’s place', { ...value, row: { ...row, [key]: point } });
            }}
            {...at(`row.${key}`)}
          />
        ))}
    </>
  );
}
