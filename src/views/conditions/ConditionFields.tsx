import { patchCondition } from '../../project/edit/conditionEdits';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import { CheckField } from '../../ui/fields/CheckField';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { formatQuantity } from '../../units/print';
import { ConditionQuantities, ConditionQuantity } from './ConditionQuantity';
import {
  airFields,
  doubtFields,
  humidityField,
  priceFields,
  sailingFields,
  totalResistanceField,
  type ConditionPatch,
} from './conditionFields';
import { fieldId } from './fieldId';
import { Section } from '../../ui/Section';
import type { FormEdit } from '../../ui/useFormEdit';
import { WindSection } from './WindSection';

interface ConditionFieldsProps {
  readonly summary: ConditionSummary;
  readonly form: FormEdit;
}

/** Everything that a sailing condition is given as. */
export function ConditionFields({ summary, form }: ConditionFieldsProps) {
  const { condition } = summary;
  const { id, name } = condition;
  const set = (field: string, words: string, patch: ConditionPatch): void => {
    form.run(field, `Change the ${words} of ${name}`, (project) => patchCondition(project, id, patch));
  };
  const [nameField, noteField, limitField] = [`${id}.name`, `${id}.note`, `${id}.prices.atHeelLimit`];
  return (
    <>
      <div className="condition-name">
        <TextField
          key={nameField}
          id={fieldId('name')}
          kind="name"
          label="Name"
          value={name}
          {...form.at(nameField)}
          onCommit={(next) => {
            set(nameField, 'name', { name: next });
          }}
        />
      </div>
      <WindSection summary={summary} form={form} />
      <Section head="Sailing">
        <ConditionQuantities condition={condition} fields={sailingFields} form={form} />
      </Section>
      <Section head="Air">
        <ConditionQuantities condition={condition} fields={airFields} form={form} />
        <details>
          <summary>Humidity, {formatQuantity(condition.air.relativeHumidity, '%', { decimals: 0 })}</summary>
          <ConditionQuantities condition={condition} fields={[humidityField]} form={form} />
        </details>
        <p className="fine">Density {formatQuantity(summary.densityKgM3, 'kg/m3')}</p>
      </Section>
      <Section head="Doubts">
        <p className="fine">Nine times in ten the truth lies within; each widens every row's spread.</p>
        <ConditionQuantities condition={condition} fields={doubtFields} form={form} />
      </Section>
      <Section head="What it costs her">
        <p className="fine">
          Prices turn side force and heel into drag: the full price. Left empty, the ledger counts neither.
        </p>
        <ConditionQuantities condition={condition} fields={priceFields} form={form} />
        <CheckField
          key={limitField}
          id={fieldId('prices.atHeelLimit')}
          label="At the heel limit"
          describe="Only there does heel cost drive."
          value={condition.prices.atHeelLimit}
          {...form.at(limitField)}
          onCommit={(atHeelLimit) => {
            set(limitField, 'heel limit', { prices: { atHeelLimit } });
          }}
        />
        <ConditionQuantity
          key={`${id}.totalResistanceN`}
          condition={condition}
          field={totalResistanceField}
          form={form}
        />
      </Section>
      <NoteField
        key={noteField}
        id={fieldId('note')}
        kind="note"
        label="Note"
        value={condition.note}
        {...form.at(noteField)}
        onCommit={(note) => {
          set(noteField, 'note', { note });
        }}
      />
    </>
  );
}
