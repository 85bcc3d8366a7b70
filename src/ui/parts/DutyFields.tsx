import type { ProjectCondition, ProjectDuty } from '../../project/file/schema';
import { formatQuantity } from '../../units/print';
import { NumberField } from '../fields/NumberField';
import type { PartFields } from './partFields';

const shareRange = { fromSi: 0, toSi: 1 };

interface DutyFieldsProps extends PartFields<ProjectDuty> {
  readonly label: string;
  readonly conditions: readonly ProjectCondition[];
  /** Null goes back to the share of all conditions. */
  readonly onShare: (condition: ProjectCondition, fraction: number | null) => void;
}

/** How much of the time a fitting is in use: in general, and where a condition differs. */
export function DutyFields({ value, at, onChange, label, conditions, onShare }: DutyFieldsProps) {
  return (
    <>
      <NumberField
        label={label}
        isPercent
        range={shareRange}
        valueSi={value.default}
        onCommit={(share) => {
          onChange('default', 'share of the time', { ...value, default: share });
        }}
        {...at('default')}
      />
      {conditions.map((condition) => (
        <NumberField
          key={condition.id}
          label={`In ${condition.name}`}
          required={false}
          isPercent
          range={shareRange}
          valueSi={value.byCondition.find((each) => each.conditionId === condition.id)?.fraction ?? null}
          onCommit={(share) => {
            onShare(condition, share);
          }}
          {...at(condition.id)}
        />
      ))}
      {conditions.length > 0 && (
        <p className="fine">Empty takes the share above, {formatQuantity(value.default, '%')}.</p>
      )}
    </>
  );
}
