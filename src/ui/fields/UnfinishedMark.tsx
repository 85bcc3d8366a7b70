import { useTypedTexts } from '../../state/typedTexts';
import './unfinishedMark.css';

/** Says in a head that text waits in fields beneath it; silent about the field that somebody is typing in. */
export function UnfinishedMark({ within }: { readonly within: string }) {
  const labels = useTypedTexts(({ texts, typingIn }) =>
    // Every row of the ledger asks: mostly there is nothing to look through.
    (texts.size === 0 ? [] : [...texts])
      .filter(([path]) => path !== typingIn && path.startsWith(within))
      .map(([, { label }]) => label)
      .join(', '),
  );
  if (labels === '') return null;
  return (
    <span className="unfinished-mark">
      half-typed
      <wbr />
      <span>: {labels}</span>
    </span>
  );
}
