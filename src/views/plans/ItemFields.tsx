import { changeItemKind } from '../../project/edit/itemEdits';
import { changeItemFitting } from '../../project/edit/itemPartEdits';
import type { Project } from '../../project/file/schema';
import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { NumberField } from '../../ui/fields/NumberField';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { FlagFields } from '../../ui/parts/FlagFields';
import { partOf } from '../../ui/parts/partFields';
import { ChangeFields } from './ChangeFields';
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
  const { item, planId, patch, at } = editor;
  const currency = project.currency === '' ? '' : `, ${project.currency}`;
  return (
    <div className="plans-fields">
      <div className="field-wide">
        <TextField
          kind="name"
          label="Name"
          value={item.name}
          onCommit={(name) => {
            patch('name', 'name', { name });
          }}
          {...at('name')}
        />
      </div>
      <ChoiceField
        label="About"
        value={item.fittingId}
        choices={project.fittings.map(({ id, name }) => ({ value: id, label: name }))}
        onCommit={(fittingId) => {
          editor.runField('fittingId', 'fitting', (current) =>
            changeItemFitting(current, planId, item.id, fittingId),
          );
        }}
        {...at('fittingId')}
      />
      <ChoiceField
        label="Change"
        value={item.change.kind}
        choices={changeChoices}
        onCommit={(kind) => {
          editor.runField('change.kind', 'kind', (current) => changeItemKind(current, planId, item.id, kind));
        }}
        {...at('change.kind')}
      />
      <ChangeFields
        key={`${item.fittingId}.${item.change.kind}`}
        project={project}
        fitting={account.fitting}
        editor={editor}
      />
      <MassFields project={project} fitting={account.fitting} editor={editor} />
      <NumberField
        label={`Cost${currency}`}
        valueSi={item.cost}
        range={{ fromSi: -mostMoney, toSi: mostMoney }}
        onCommit={(cost) => {
          patch('cost', 'cost', { cost });
        }}
        {...at('cost')}
      />
      <FlagFields {...partOf(editor, 'flags', item.flags, (flags) => ({ flags }))} />
      <NoteField
        kind="note"
        label="Note"
        rows={2}
        value={item.note}
        onCommit={(note) => {
          patch('note', 'note', { note });
        }}
        {...at('note')}
      />
    </div>
  );
}
