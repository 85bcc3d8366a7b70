import type { Project, ProjectDuty } from '../../project/file/schema';
import { NumberField } from '../../ui/fields/NumberField';
import type { ChangeOf } from './ChangeFields';
import type { ItemEditor } from './usePlanEdits';

interface DutyFieldsProps {
  readonly change: ChangeOf<'retracted'>;
  readonly project: Project;
  readonly editor: ItemEditor;
}

const whole = { fromSi: 0, toSi: 1 };

/** How much of the time the fitting is still out: in general, and where a condition differs. */
export function DutyFields({ change, project, editor }: DutyFieldsProps) {
  const { key, errorAt, done } = editor;
  const { dutyFraction } = change;
  const set = (part: string, next: ProjectDuty): void => {
    editor.patch(`change.dutyFraction.${part}`, 'duty', {
      change: { kind: 'retracted', dutyFraction: next },
    });
  };
  return (
    <>
      <NumberField
        key={`${key}.duty`}
        label="Still out, share of the time"
        isPercent
        range={whole}
        valueSi={dutyFraction.default}
        error={errorAt('change.dutyFraction.default')}
        onCommit={(fraction) => {
          set('default', { ...dutyFraction, default: fraction });
        }}
        onDone={done}
      />
      {project.conditions.map(({ id, name }) => (
        <NumberField
          key={`${key}.duty.${id}`}
          label={`… in ${name}, where it differs`}
          isPercent
          required={false}
          range={whole}
          valueSi={dutyFraction.byCondition.find(({ conditionId }) => conditionId === id)?.fraction ?? null}
          onCommit={(fraction) => {
            set(id, { ...dutyFraction, byCondition: withFraction(dutyFraction.byCondition, id, fraction) });
          }}
          onDone={done}
        />
      ))}
    </>
  );
}

/** The list with one condition's fraction set, or left out when there is none; the others keep their places. */
function withFraction(
  list: ProjectDuty['byCondition'],
  conditionId: string,
  fraction: number | null,
): ProjectDuty['byCondition'] {
  if (fraction === null) return list.filter((entry) => entry.conditionId !== conditionId);
  const isThere = list.some((entry) => entry.conditionId === conditionId);
  if (!isThere) return [...list, { conditionId, fraction }];
  return list.map((entry) => (entry.conditionId === conditionId ? { ...entry, fraction } : entry));
}
