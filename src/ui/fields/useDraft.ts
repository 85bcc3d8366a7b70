import { useEffect, useRef, useState, type KeyboardEvent } from 'react';

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
 * The text of a field apart from its value: half-typed text stays here, every readable text is committed at once, and a
 * value that changes from outside (undo) replaces the text unless that is half-typed.
 */
export function useDraft<Value>(options: DraftOptions<Value>): Draft<Value> {
  const { value, print, read, isSame, onCommit, onDone, error, endsOnEnter = true } = options;
  const [draft, setDraft] = useState<string | null>(null);
  const [isJudged, setIsJudged] = useState(false);
  const [seen, setSeen] = useState({ value, printed: print(value) });
  const valueOnEntry = useRef(value);
  const reading = draft === null ? null : read(draft);

  const printed = print(value);
  const hasValueChanged = !isSame(seen.value, value);
  if (hasValueChanged || seen.printed !== printed) {
    setSeen({ value, printed });
    // The typed text still says the value when the change is its own commit coming back.
    if (reading?.ok === true && !isSame(reading.value, value)) setDraft(null);
  }

  const isWrong = reading?.ok === false;
  useEffect(() => {
    if (!isWrong) return;
    const timer = setTimeout(() => {
      setIsJudged(true);
    }, patienceMs);
    return () => {
      clearTimeout(timer);
    };
  }, [isWrong, draft]);

  const commit = (next: Value): void => {
    if (!Object.is(next, value)) onCommit(next);
  };

  const type = (text: string): void => {
    setDraft(text);
    const typed = read(text);
    if (!typed.ok) return;
    setIsJudged(false);
    commit(typed.value);
  };

  const choose = (next: Value): void => {
    setDraft(null);
    setIsJudged(false);
    commit(next);
  };

  /** Text that was understood gives way to the printed value; text that was not, or was refused outside, stays. */
  const settle = (): boolean => {
    onDone?.();
    if (reading?.ok === false) {
      setIsJudged(true);
      return false;
    }
    const isRefused = reading !== null && error !== undefined && !isSame(reading.value, value);
    if (!isRefused) setDraft(null);
    return !isRefused;
  };

  const restore = (event: KeyboardEvent): void => {
    const isChanged = !isSame(valueOnEntry.current, value);
    if (draft === null && !isChanged) return;
    // Escape has done its work here; a drawer around the field stays open.
    event.stopPropagation();
    event.preventDefault();
    choose(isChanged ? valueOnEntry.current : value);
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.nativeEvent.isComposing) return;
    // Undo of half-typed text is the browser's: the project has not heard of it yet.
    if (reading?.ok === false && (event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key))
      event.stopPropagation();
    if (event.key === 'Escape') restore(event);
    if (event.key !== 'Enter' || !endsOnEnter) return;
    if (settle()) valueOnEntry.current = value;
    else event.preventDefault();
  };

  return {
    text: draft ?? printed,
    problem: isJudged && reading?.ok === false ? reading.message : null,
    type,
    choose,
    enter: () => {
      valueOnEntry.current = value;
    },
    leave: () => {
      settle();
    },
    onKeyDown,
  };
}
