import type { ProjectPoint, ProjectStowed } from '../../project/file/schema';
import { CheckField } from '../fields/CheckField';
import { RangedField } from '../fields/RangedField';
import { dragAreaRange } from './AreaFields';
import type { PartFields } from './partFields';
import './parts.css';
import { PointField } from './smallFields';
import { SourceField } from './SourceField';

interface StowedFieldsProps extends PartFields<ProjectStowed | null> {
  /** Where the stowed fitting is taken to be until somebody says. */
  readonly startPlace: ProjectPoint;
}

/** What still stands in the wind when the fitting is stowed. */
export function StowedFields({ value, at, onChange, startPlace }: StowedFieldsProps) {
  return (
    <>
      <CheckField
        label="Stowed, something of it is left"
        value={value !== null}
        describe={value === null ? 'Nothing is left: stowed, it has no drag.' : undefined}
        onCommit={(isLeft) => {
          const dragAreaM2 = { best: 0, low: 0, high: 0 };
          onChange('', 'stowed state', isLeft ? { dragAreaM2, place: startPlace, source: '' } : null);
        }}
        {...at('')}
      />
      {value !== null && (
        <div className="field-part">
          <RangedField
            label="Drag area when stowed"
            dimension="area"
            unit="m2"
            range={dragAreaRange}
            value={value.dragAreaM2}
            onCommit={(dragAreaM2) => {
              onChange('dragAreaM2', 'stowed drag area', { ...value, dragAreaM2 });
            }}
            {...at('dragAreaM2')}
          />
          <PointField
            label="Place when stowed"
            value={value.place}
            onCommit={(place) => {
              onChange('place', 'stowed place', { ...value, place });
            }}
            {...at('place')}
          />
          <SourceField
            value={value.source}
            onCommit={(source) => {
              onChange('source', 'source of the stowed state', { ...value, source });
            }}
            {...at('source')}
          />
        </div>
      )}
    </>
  );
}
