import { setSafetyReason } from '../../project/edit/itemEdits';
import { isWithheld } from '../../project/refit/applyPlan';
import type { ItemAccount } from '../../project/ledger/ledgerTypes';
import { TextField } from '../../ui/fields/TextField';
import { useKeptText } from '../../ui/fields/useKeptText';
import { useFocusNext } from '../../ui/useFocusNext';
import { reasonButtonId } from './focusIds';
import type { ItemEditor } from './usePlanEdits';

interface SafetyFieldsProps {
  readonly account: ItemAccount;
  readonly editor: ItemEditor;
}

/** For a safety-required fitting: who answers for the change, and why, beside the caution. */
export function SafetyFields({ account, editor }: SafetyFieldsProps) {
  const { item, fitting } = account;
  const focusNext = useFocusNext();
  // The button that was pressed gives way to the other one, which takes over the focus.
  const keepFocus = (): void => {
    focusNext(reasonButtonId(item.id));
  };
  const isGuarded = isWithheld({ ...item, safetyReason: null }, fitting?.flags.safetyRequired === true);
  if (!isGuarded && item.safetyReason === null) return null;
  return (
    <fieldset className="plans-safety">
      <legend>Safety-required</legend>
      {item.safetyReason === null ? (
        <NewReason editor={editor} onGiven={keepFocus} />
      ) : (
        <GivenReason reason={item.safetyReason} editor={editor} onTakenBack={keepFocus} />
      )}
    </fieldset>
  );
}

/** Both are kept until somebody says that they count: half a reason is none. */
function NewReason({ editor, onGiven }: { readonly editor: ItemEditor; readonly onGiven: () => void }) {
  const { item, planId, key } = editor;
  const typedFor = `plan/${key}.newReason`;
  const [person, setPerson] = useKeptText(`${typedFor}.person`, 'Person');
  const [reason, setReason] = useKeptText(`${typedFor}.reason`, 'Reason');
  const isWhole = person.trim() !== '' && reason.trim() !== '';
  return (
    <>
      <p>
        This fitting keeps people safe, and no watt is worth a life. Its saving stays out of every total until
        a named person has given a reason; the reason then stands beside it.
      </p>
      <TextField
        kind="short"
        label="Person"
        value={person}
        onCommit={setPerson}
        typedFor={`${typedFor}.person.refused`}
      />
      <TextField
        kind="note"
        label="Reason"
        value={reason}
        onCommit={setReason}
        typedFor={`${typedFor}.reason.refused`}
      />
      <p className="plans-actions">
        <button
          id={reasonButtonId(item.id)}
          type="button"
          className="plain-action"
          // Not `disabled`: the focus comes here when a reason is taken back.
          aria-disabled={!isWhole}
          onClick={() => {
            if (!isWhole) return;
            const answer = editor.run(`Give a reason for ${item.name}`, (project) =>
              setSafetyReason(project, planId, item.id, { person, reason }),
            );
            if ('refused' in answer) return;
            setPerson('');
            setReason('');
            onGiven();
          }}
        >
          Count it for this reason
        </button>
        {!isWhole && <span className="muted">once both are there</span>}
      </p>
      {editor.errorAt('safetyReason') !== undefined && <p>{editor.errorAt('safetyReason')}</p>}
    </>
  );
}

interface GivenReasonProps {
  readonly reason: { readonly person: string; readonly reason: string };
  readonly editor: ItemEditor;
  readonly onTakenBack: () => void;
}

function GivenReason({ reason, editor, onTakenBack }: GivenReasonProps) {
  const { item, planId, key } = editor;
  return (
    <>
      <TextField
        key={`${key}.person`}
        kind="name"
        label="Person"
        value={reason.person}
        error={editor.errorAt('safetyReason.person')}
        onCommit={(person) => {
          editor.patch('safetyReason.person', 'person', { safetyReason: { ...reason, person } });
        }}
        onDone={editor.done}
      />
      <TextField
        key={`${key}.reason`}
        kind="reason"
        label="Reason"
        value={reason.reason}
        error={editor.errorAt('safetyReason.reason')}
        onCommit={(text) => {
          editor.patch('safetyReason.reason', 'reason', { safetyReason: { ...reason, reason: text } });
        }}
        onDone={editor.done}
      />
      <p className="plans-actions">
        <button
          id={reasonButtonId(item.id)}
          type="button"
          className="plain-action"
          onClick={() => {
            const answer = editor.run(`Take back the reason for ${item.name}`, (project) =>
              setSafetyReason(project, planId, item.id, null),
            );
            if (!('refused' in answer)) onTakenBack();
          }}
        >
          Take the reason back
        </button>
      </p>
    </>
  );
}
