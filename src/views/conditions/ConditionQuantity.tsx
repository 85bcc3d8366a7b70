import { patchCondition } from '../../project/edit/conditionEdits';
import type { ProjectCondition } from '../../project/file/schema';
import { QuantityField } from '../../ui/fields/QuantityField';
import type { ConditionField } from './conditionFields';
import { fieldId } from './fieldId';
import type { FormEdit } from '../../ui/useFormEdit';

interface ConditionQuantityProps {
  readonly condition: ProjectCondition;
  readonly field: ConditionField;
  readonly form: FormEdit;
}

/** One quantity of a condition. */
export function ConditionQuantity({ condition, field, form }: ConditionQuantityProps) {
  const { path, label, words, dimension, unit, range, describe, isOptional = false } = field;
  const key = `${condition.id}.${path}`;
  const valueSi = field.read(condition);
  const commit = (next: number | null): void => {
    const patch = field.patch(next);
    form.run(key, `Change the ${words} of ${condition.name}`, (project) =>
      patchCondition(project, condition.id, patch),
    );
  };
  const common = {
    id: fieldId(path),
    label,
    dimension,
    unit,
    range,
    describe,
    ...form.at(key),
    typedFor: `condition/${condition.id}.${placeOf(condition, path)}`,
    lastGoodSi: valueSi,
  };
  if (isOptional) {
    return <QuantityField {...common} required={false} valueSi={valueSi} onCommit={commit} />;
  }
  return valueSi === null ? null : <QuantityField {...common} valueSi={valueSi} onCommit={commit} />;
}

/** The same path is another quantity when the wind is given the other way. */
function placeOf({ wind }: ProjectCondition, path: string): string {
  return path.startsWith('wind.') ? `${wind.kind}.${path}` : path;
}

interface ConditionQuantitiesProps extends Omit<ConditionQuantityProps, 'field'> {
  readonly fields: readonly ConditionField[];
}

/** Several, one under the other. The key keeps half-typed text with the condition it was typed for. */
export function ConditionQuantities({ condition, fields, form }: ConditionQuantitiesProps) {
  return fields.map((field) => (
    <ConditionQuantity
      key={`${condition.id}.${condition.wind.kind}.${field.path}`}
      condition={condition}
      field={field}
      form={form}
    />
  ));
}
