import { useEffect, useRef, useState, type KeyboardEvent } from 'react';
import { dropTyped, keepTyped, restIn, showField, typeIn, useTypedTexts } from '../../state/typedTexts';
import { inForce, quoted } from './fieldText';

/** What a typed text means: a value, or a sentence that says what is wrong and what would be accepted. */
export type Reading<Value> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly message: string };

interface DraftOptions<Value> {
  readonly value: Value;
  /** The value as the field shows it while nobody types. */
  readonly print: (value: Value) => string;
  readonly read: (text: string) => Reading<Value>;
  readonly isSame: (a: Value, b: Value) => boolean;
  readonly onCommit: (value: Value) => void;
  /** Called when an edit has come to its end (Enter, leaving the field), so that undo can close its step. */
  readonly onDone?: (() => void) | undefined;
  /** A complaint from outside: the store took the last commit badly. */
  readonly error?: string | undefined;
  /** False where Enter is a line break. */
  readonly endsOnEnter?: boolean;
  /** What the text is typed for; without it, text that is no value lasts as long as the field. */
  readonly typedFor?: string | undefined;
  /** The field's name, for a line that leads back to it. */
  readonly label?: string;
}

export interface Draft<Value> {
  readonly text: string;
  /** The sentence under the field, once it is time to show it. */
  readonly problem: string | null;
  readonly type: (text: string) => void;
  /** Commits a value that was not typed, such as a step. */
  readonly choose: (value: Value) => void;
  readonly enter: () => void;
  readonly leave: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/** So long may a text stand still, ms, before the field calls it wrong instead of half-typed. */
const patienceMs = 700;

/**
 * The text of a field apart from its value. Every readable text is committed at once; half-typed and refused text is kept
 * for what it was typed for, and is there when the field comes back. A value that changes from outside (undo) replaces
 * the text unless that is kept.
 */
export function useDraft<Value>(options: DraftOptions<Value>): Draft<Value> {
  const { value, print, read, isSame, onCommit, onDone, error, endsOnEnter = true } = options;
  const { typedFor, label = '' } = options;
  const [local, setLocal] = useState<string | null>(null);
  const kept = useTypedTexts(({ texts }) => (typedFor === undefined ? undefined : texts.get(typedFor)));
  const [isJudged, setIsJudged] = useState(kept !== undefined);
  const printed = print(value);
  const [seen, setSeen] = useState({ value, printed, typedFor });
  const valueOnEntry = useRef(value);
  const draft = kept?.text ?? local;
  const reading = draft === null ? null : read(draft);
  const isWrong = reading?.ok === false;
  /** Readable, but not in force: the project refused it, or it was typed when the field took less. */
  const isHeldBack = reading?.ok === true && !isSame(reading.value, value);

  if (seen.typedFor !== typedFor) {
    setSeen({ value, printed, typedFor });
    setLocal(null);
    setIsJudged(kept !== undefined);
  } else if (!isSame(seen.value, value) || seen.printed !== printed) {
    setSeen({ value, printed, typedFor });
    // The typed text still says the value when the change is its own commit coming back.
    if (isHeldBack) setLocal(null);
  }
  if (isJudged && !isWrong) setIsJudged(false);

  useEffect(() => (typedFor === undefined ? undefined : showField(typedFor)), [typedFor]);
  useEffect(() => {
    if (!isWrong) return;
    const timer = setTimeout(() => {
      setIsJudged(true);
    }, patienceMs);
    return () => {
      clearTimeout(timer);
    };
  }, [isWrong, draft]);

  const keep = (text: string, refusal: string | null): void => {
    if (typedFor !== undefined) keepTyped(typedFor, { text, label, refusal });
  };
  const drop = (): void => {
    if (typedFor !== undefined) dropTyped(typedFor);
  };
  const refusedText = isHeldBack && error !== undefined ? local : null;
  const isSettled = kept !== undefined && reading?.ok === true && !isHeldBack;
  useEffect(() => {
    if (refusedText !== null) keep(refusedText, error ?? null);
    // The value has become what was typed, as by undo.
    if (isSettled) drop();
  });

  const commit = (next: Value): void => {
    if (!Object.is(next, value)) onCommit(next);
  };

  const type = (text: string): void => {
    setLocal(text);
    if (typedFor !== undefined) typeIn(typedFor);
    const typed = read(text);
    if (!typed.ok) {
      keep(text, null);
      return;
    }
    drop();
    commit(typed.value);
  };

  const choose = (next: Value): void => {
    setLocal(null);
    setIsJudged(false);
    drop();
    commit(next);
  };

  /** Text that was understood gives way to the printed value; text that was not, or was refused outside, stays. */
  const settle = (): boolean => {
    onDone?.();
    if (isWrong) {
      setIsJudged(true);
      return false;
    }
    if (isHeldBack && (error !== undefined || kept !== undefined)) return false;
    setLocal(null);
    return true;
  };

  const restore = (event: KeyboardEvent): void => {
    const isChanged = !isSame(valueOnEntry.current, value);
    if (draft === null && !isChanged) return;
    // Escape has done its work here; a drawer around the field stays open.
    event.stopPropagation();
    event.preventDefault();
    choose(isChanged ? valueOnEntry.current : value);
  };

  /** What came back readable is taken only when somebody says so: it may have been typed for another unit. */
  const takeHeldBack = (): void => {
    if (kept === undefined || error !== undefined || reading?.ok !== true || !isHeldBack) return;
    setLocal(kept.text);
    drop();
    commit(reading.value);
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.nativeEvent.isComposing) return;
    // Undo of half-typed text is the browser's: the project has not heard of it yet.
    if (isWrong && (event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key)) event.stopPropagation();
    if (event.key === 'Escape') restore(event);
    if (event.key !== 'Enter' || !endsOnEnter) return;
    takeHeldBack();
    if (settle()) valueOnEntry.current = value;
    else event.preventDefault();
  };

  return {
    text: draft ?? printed,
    problem: problemOf(),
    type,
    choose,
    enter: () => {
      valueOnEntry.current = value;
    },
    leave: () => {
      if (typedFor !== undefined) restIn(typedFor);
      settle();
    },
    onKeyDown,
  };

  function problemOf(): string | null {
    if (reading?.ok === false) return isJudged ? reading.message : null;
    if (kept === undefined || !isHeldBack || error !== undefined) return null;
    const reason = kept.refusal ?? `${quoted(kept.text)} is not taken yet, Enter takes it`;
    return `${reason.replace(/\.$/, '')}${inForce(printed)}.`;
  }
}
