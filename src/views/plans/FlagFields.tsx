import type { ProjectClassRule } from '../../project/file/schema';
import { CheckField } from '../../ui/fields/CheckField';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { TextField } from '../../ui/fields/TextField';
import type { ItemEditor } from './usePlanEdits';

type RulingChoice = ProjectClassRule['ruling'] | 'none';

const rulings: readonly { readonly value: RulingChoice; readonly label: string }[] = [
  { value: 'none', label: 'none touched' },
  { value: 'allowed', label: 'allowed' },
  { value: 'needs-ruling', label: 'needs a ruling' },
  { value: 'not-allowed', label: 'not allowed' },
];

/** What an item brings along: a class rule, structure, moving parts. */
export function FlagFields({ editor }: { readonly editor: ItemEditor }) {
  const { item, key, patch, errorAt, done } = editor;
  const { classRule, structural, movingPart } = item.flags;
  return (
    <>
      <ChoiceField
        key={`${key}.ruling`}
        label="Class rule"
        value={classRule?.ruling ?? 'none'}
        choices={rulings}
        onCommit={(ruling) => {
          const rule = classRule?.rule ?? '';
          patch('flags.classRule', 'class rule', {
            flags: { classRule: ruling === 'none' ? null : { ruling, rule } },
          });
        }}
        onDone={done}
      />
      {classRule !== null && (
        <TextField
          key={`${key}.rule`}
          kind="short"
          label="Number of the rule"
          value={classRule.rule}
          error={errorAt('flags.classRule.rule')}
          onCommit={(rule) => {
            patch('flags.classRule.rule', 'class rule', { flags: { classRule: { ...classRule, rule } } });
          }}
          onDone={done}
        />
      )}
      <CheckField
        key={`${key}.structural`}
        label="Structural"
        value={structural}
        onCommit={(is) => {
          patch('flags.structural', 'structural flag', { flags: { structural: is } });
        }}
        onDone={done}
      />
      <CheckField
        key={`${key}.movingPart`}
        label="Moving part"
        value={movingPart}
        onCommit={(is) => {
          patch('flags.movingPart', 'moving-part flag', { flags: { movingPart: is } });
        }}
        onDone={done}
      />
    </>
  );
}
