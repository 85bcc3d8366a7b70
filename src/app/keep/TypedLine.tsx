import { useAppStore } from '../../state/appStore';
import { dropTyped, ownerOf, useTypedTexts, type Owner } from '../../state/typedTexts';
import { KeepAction, KeepLine } from './KeepLine';
import { openTyped } from './openTyped';

const longestQuote = 40;

/** That text waits in fields which are not on the page, and the way to the first of them. */
export function TypedLine() {
  const project = useAppStore((state) => state.project);
  const texts = useTypedTexts((state) => state.texts);
  const elsewhere = useTypedTexts((state) => state.elsewhere);
  if (project === null) return null;
  const waiting = elsewhere.flatMap((path) => {
    const typed = texts.get(path);
    const owner = ownerOf(project, path);
    return typed === undefined || owner === null ? [] : [{ path, typed, owner }];
  });
  const [first] = waiting;
  if (first === undefined) return null;
  const { path, typed, owner } = first;
  const count = waiting.length === 1 ? '1 field is half-typed' : `${waiting.length} fields are half-typed`;
  return (
    <KeepLine
      isQuiet
      words={
        <>
          {count}: {typed.label}
          {ownerWords(owner)}, {quotedText(typed.text)}
          {waiting.length === 1 ? '.' : `, and ${waiting.length - 1} more.`}
        </>
      }
    >
      <KeepAction
        words={waiting.length === 1 ? 'Open it' : 'Open the first'}
        onAct={() => {
          openTyped(path);
        }}
      />
      <KeepAction
        words="Let the text go"
        onAct={() => {
          dropTyped(path);
        }}
      />
    </KeepLine>
  );
}

function ownerWords(owner: Owner): string {
  return 'name' in owner ? ` of ${owner.name}` : '';
}

function quotedText(text: string): string {
  const tidy = text.trim();
  if (tidy === '') return 'emptied';
  return tidy.length > longestQuote ? `“${tidy.slice(0, longestQuote)}…”` : `“${tidy}”`;
}
