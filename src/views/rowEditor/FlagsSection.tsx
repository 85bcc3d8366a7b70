import type { ProjectClassRule, ProjectFlags } from '../../project/file/schema';
import { cautions } from '../../project/wording/cautions';
import { noReasonYet } from '../../project/wording/noReason';
import { CheckField } from '../../ui/fields/CheckField';
import { ChoiceField, type Choice } from '../../ui/fields/ChoiceField';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { Section } from './Section';
import type { RowEdit } from './useRowEdit';

type Ruling = ProjectClassRule['ruling'] | 'none';

const rulingChoices: readonly Choice<Ruling>[] = [
  { value: 'none', label: 'none' },
  { value: 'allowed', label: 'allowed' },
  { value: 'needs-ruling', label: 'needs a ruling' },
  { value: 'not-allowed', label: 'not allowed' },
];

const [, safetyCaution, structuralCaution, classCaution, movingCaution] = cautions;

const checks = [
  { key: 'safetyRequired', label: 'Safety-required', caution: safetyCaution },
  { key: 'structural', label: 'Structural', caution: structuralCaution },
  { key: 'movingPart', label: 'Moving part', caution: movingCaution },
] as const;

/** What must be asked before this fitting is touched, and whether it is left out of the sums. */
export function FlagsSection({ row }: { readonly row: RowEdit }) {
  const { flags, excluded } = row.fitting;
  return (
    <Section head="Flags">
      {checks.map(({ key, label, caution }) => (
        <CheckField
          key={key}
          label={label}
          value={flags[key]}
          // The safety caution stands before anybody clears the flag; the others once they are set.
          describe={flags[key] || key === 'safetyRequired' ? caution : undefined}
          onCommit={(isSet) => {
            row.patch(`flags.${key}`, `flag "${label.toLowerCase()}"`, { flags: { [key]: isSet } });
          }}
          {...row.at(`flags.${key}`)}
        />
      ))}
      <ClassRuleFields row={row} flags={flags} />
      <CheckField
        label="Left out of the sums"
        value={excluded !== null}
        onCommit={(isOut) => {
          row.patch('excluded', 'exclusion', { excluded: isOut ? { reason: noReasonYet } : null });
        }}
        {...row.at('excluded')}
      />
      {excluded !== null && (
        <NoteField
          label="Reason for leaving it out"
          kind="reason"
          rows={2}
          value={excluded.reason}
          onCommit={(reason) => {
            row.patch('excluded.reason', 'reason for leaving it out', { excluded: { reason } });
          }}
          {...row.at('excluded.reason')}
        />
      )}
    </Section>
  );
}

function ClassRuleFields({ row, flags }: { readonly row: RowEdit; readonly flags: ProjectFlags }) {
  const { classRule } = flags;
  return (
    <>
      <ChoiceField
        label="Class rule"
        choices={rulingChoices}
        value={classRule?.ruling ?? 'none'}
        describe={classRule === null ? undefined : classCaution}
        onCommit={(ruling) => {
          const next = ruling === 'none' ? null : { ruling, rule: classRule?.rule ?? '' };
          row.patch('flags.classRule', 'class ruling', { flags: { classRule: next } });
        }}
        {...row.at('flags.classRule')}
      />
      {classRule !== null && (
        <TextField
          label="Number of the rule"
          kind="short"
          value={classRule.rule}
          onCommit={(rule) => {
            row.patch('flags.rule', 'class rule', { flags: { classRule: { ...classRule, rule } } });
          }}
          {...row.at('flags.rule')}
        />
      )}
    </>
  );
}
