import { changeItemKind } from '../../project/edit/itemEdits';
import type { Project } from '../../project/file/schema';
import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { NumberField } from '../../ui/fields/NumberField';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { ChangeFields } from './ChangeFields';
import { FlagFields } from './FlagFields';
import { MassFields } from './MassFields';
import { changeChoices } from './planWords';
import type { ItemEditor } from './usePlanEdits';

interface ItemFieldsProps {
  readonly project: Project;
  readonly account: ItemAccount;
  readonly editor: ItemEditor;
}

const mostMoney = 1e12;

/** Everything about an item that can be typed. */
export function ItemFields({ project, account, editor }: ItemFieldsProps) {
  const { item, key, planId, patch, errorAt, done } = editor;
  const currency = project.currency === '' ? '' : `, ${project.currency}`;
  return (
    <div className="plans-fields">
      <TextField
        key={`${key}.name`}
        kind="name"
        label="Name"
        value={item.name}
        error={errorAt('name')}
        onCommit={(name) => {
          patch('name', 'name', { name });
        }}
        onDone={done}
      />
      <ChoiceField
        key={`${key}.change.kind`}
        label="Change"
        value={item.change.kind}
        choices={changeChoices}
        error={errorAt('change.kind')}
        onCommit={(kind) => {
          editor.run(`Change the kind of ${item.name}`, (current) =>
            changeItemKind(current, planId, item.id, kind),
          );
        }}
      />
      <ChangeFields key={item.change.kind} project={project} fitting={account.fitting} editor={editor} />
      <MassFields project={project} fitting={account.fitting} editor={editor} />
      <NumberField
        key={`${key}.cost`}
        label={`Cost${currency}`}
        valueSi={item.cost}
        range={{ fromSi: -mostMoney, toSi: mostMoney }}
        error={errorAt('cost')}
        onCommit={(cost) => {
          patch('cost', 'cost', { cost });
        }}
        onDone={done}
      />
      <FlagFields editor={editor} />
      <NoteField
        key={`${key}.note`}
        kind="note"
        label="Note"
        rows={2}
        value={item.note}
        error={errorAt('note')}
        onCommit={(note) => {
          patch('note', 'note', { note });
        }}
        onDone={done}
      />
    </div>
  );
}
