import type { ProjectClassRule, RefitItem } from '../../project/file/schema';
import { cautions } from '../../project/wording/cautions';
import { CheckField } from '../fields/CheckField';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { TextField } from '../fields/TextField';
import { inside, type PartFields } from './partFields';

/** What fittings and refit items are both flagged with. */
type Flags = RefitItem['flags'];

const [, , structuralCaution, classCaution, movingCaution] = cautions;

const checks = [
  { key: 'structural', label: 'Structural', caution: structuralCaution },
  { key: 'movingPart', label: 'Moving part', caution: movingCaution },
] as const;

/** What must be asked about: structure, moving parts, a class rule. A set flag says its caution. */
export function FlagFields(flags: PartFields<Flags>) {
  const { value, at, onChange } = flags;
  return (
    <>
      {checks.map(({ key, label, caution }) => (
        <CheckField
          key={key}
          label={label}
          value={value[key]}
          describe={value[key] ? caution : undefined}
          onCommit={(isSet) => {
            onChange(key, `flag "${label.toLowerCase()}"`, { ...value, [key]: isSet });
          }}
          {...at(key)}
        />
      ))}
      <ClassRuleFields
        {...inside(flags, 'classRule', value.classRule, (classRule) => ({ ...value, classRule }))}
      />
    </>
  );
}

type Ruling = ProjectClassRule['ruling'] | 'none';

const rulingChoices: readonly Choice<Ruling>[] = [
  { value: 'none', label: 'none' },
  { value: 'allowed', label: 'allowed' },
  { value: 'needs-ruling', label: 'needs a ruling' },
  { value: 'not-allowed', label: 'not allowed' },
];

function ClassRuleFields({ value, at, onChange }: PartFields<ProjectClassRule | null>) {
  return (
    <>
      <ChoiceField
        label="Class rule"
        choices={rulingChoices}
        value={value?.ruling ?? 'none'}
        describe={value === null ? undefined : classCaution}
        onCommit={(ruling) => {
          onChange('', 'class ruling', ruling === 'none' ? null : { ruling, rule: value?.rule ?? '' });
        }}
        {...at('')}
      />
      {value !== null && (
        <TextField
          label="Number of the rule"
          kind="short"
          value={value.rule}
          onCommit={(rule) => {
            onChange('rule', 'class rule', { ...value, rule });
          }}
          {...at('rule')}
        />
      )}
    </>
  );
}
