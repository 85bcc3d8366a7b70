import { cautions } from '../../project/wording/cautions';
import { CheckField } from '../../ui/fields/CheckField';
import { NoteField } from '../../ui/fields/TextField';
import { FlagFields } from '../../ui/parts/FlagFields';
import { partOf } from '../../ui/parts/partFields';
import { Section } from '../../ui/Section';
import type { RowEdit } from './useRowEdit';

const [, safetyCaution] = cautions;

/** What must be asked before this fitting is touched, and whether it is left out of the sums. */
export function FlagsSection({ row }: { readonly row: RowEdit }) {
  const { flags, excluded } = row.fitting;
  const { safetyRequired, ...otherFlags } = flags;
  return (
    <Section head="Flags">
      <CheckField
        label="Safety-required"
        value={safetyRequired}
        // The caution stands before anybody clears the flag.
        describe={safetyCaution}
        onCommit={(isSet) => {
          row.patch('flags.safetyRequired', 'flag "safety-required"', { flags: { safetyRequired: isSet } });
        }}
        {...row.at('flags.safetyRequired')}
      />
      <FlagFields {...partOf(row, 'flags', otherFlags, (next) => ({ flags: next }))} />
      <CheckField
        label="Left out of the sums"
        value={excluded !== null}
        onCommit={(isOut) => {
          row.patch('excluded', 'exclusion', { excluded: isOut ? { reason: '' } : null });
        }}
        {...row.at('excluded')}
      />
      {excluded !== null && (
        <NoteField
          label="Reason for leaving it out"
          kind="note"
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
