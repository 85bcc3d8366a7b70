import { useAppStore } from '../../state/appStore';
import type { ChangePlace, ConditionLine } from './conditionLines';

/** A value of the condition; one that may be changed leads to its field. */
export function ValueLine({ line }: { readonly line: ConditionLine }) {
  const { label, text, changedIn } = line;
  return (
    <div>
      <dt>{label}</dt>
      <dd>{changedIn === null ? text : <ChangedValue label={label} text={text} changedIn={changedIn} />}</dd>
    </div>
  );
}

interface ChangedValueProps {
  readonly label: string;
  readonly text: string;
  readonly changedIn: ChangePlace;
}

/** A value on its line: it opens the place where it is changed. */
export function ChangedValue({ label, text, changedIn }: ChangedValueProps) {
  return (
    <button
      type="button"
      className="changed-value"
      aria-label={`${label}: ${text}, change`}
      onClick={() => {
        const store = useAppStore.getState();
        if (changedIn.pane === 'methods') store.showPane('methods');
        else store.openConditionAt(changedIn.field);
      }}
    >
      <span>{text}</span>
    </button>
  );
}
