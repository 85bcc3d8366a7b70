import { changeWindKind } from '../../project/edit/changeWindKind';
import { patchCondition } from '../../project/edit/conditionEdits';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import type { ProjectCondition, ProjectWind } from '../../project/file/schema';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { formatQuantity } from '../../units/print';
import { ConditionQuantities } from './ConditionQuantity';
import { instrumentFields, trueWindFields } from './conditionFields';
import { fieldId } from './fieldId';
import { Section } from '../../ui/Section';
import type { FormEdit } from '../../ui/useFormEdit';

const kinds: readonly Choice<ProjectWind['kind']>[] = [
  { value: 'true', label: 'true wind' },
  { value: 'instrument', label: 'instruments' },
];

const tacks: readonly Choice<ProjectCondition['tack']>[] = [
  { value: 'starboard', label: 'starboard' },
  { value: 'port', label: 'port' },
];

interface WindSectionProps {
  readonly summary: ConditionSummary;
  readonly form: FormEdit;
}

/** The wind the way it was given, and beside it the other view of the same wind. */
export function WindSection({ summary, form }: WindSectionProps) {
  const { condition } = summary;
  const { id, name, wind, tack } = condition;
  const kindField = `${id}.wind.kind`;
  const tackField = `${id}.tack`;
  return (
    <Section head="Wind">
      <ChoiceField
        key={kindField}
        id={fieldId('wind.kind')}
        label="Given as"
        describe="Another way keeps the wind; the doubts below are of the wind as given."
        value={wind.kind}
        choices={kinds}
        {...form.at(kindField)}
        onCommit={(kind) => {
          form.run(kindField, `Give the wind of ${name} the other way`, (project) =>
            changeWindKind(project, id, kind),
          );
        }}
      />
      <ConditionQuantities
        condition={condition}
        fields={wind.kind === 'true' ? trueWindFields : instrumentFields}
        form={form}
      />
      <ChoiceField
        key={tackField}
        id={fieldId('tack')}
        label="Wind from, tack"
        value={tack}
        choices={tacks}
        {...form.at(tackField)}
        onCommit={(next) => {
          form.run(tackField, `Change the tack of ${name}`, (project) =>
            patchCondition(project, id, { tack: next }),
          );
        }}
      />
      <dl className="condition-views">
        <div>
          <dt>True wind at 10 m</dt>
          <dd>
            {formatQuantity(summary.trueWindAt10Ms, 'kn')} at{' '}
            {formatQuantity(summary.trueWindAngleRad, 'deg')}
          </dd>
        </div>
        <div>
          <dt>Read at the masthead, heeled with the mast</dt>
          <dd>
            {formatQuantity(summary.mastheadReading.speedMs, 'kn')} at{' '}
            {formatQuantity(summary.mastheadReading.angleFromBowRad, 'deg')}
          </dd>
        </div>
      </dl>
    </Section>
  );
}
