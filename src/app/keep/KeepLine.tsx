import type { ReactNode } from 'react';
import './keepLines.css';

interface KeepLineProps {
  readonly words: ReactNode;
  /** Nothing is wrong: something waits. */
  readonly isQuiet?: boolean;
  /** What can be done about it, as `KeepAction`s. */
  readonly children: ReactNode;
}

/** One line under the running head: a sentence and what can be done about it. */
export function KeepLine({ words, isQuiet = false, children }: KeepLineProps) {
  return (
    <div className={isQuiet ? 'keep-line keep-line-quiet' : 'keep-line'}>
      <p>{words}</p>
      {children}
    </div>
  );
}

interface KeepActionProps {
  readonly words: string;
  readonly onAct: () => void;
  readonly disabled?: boolean;
}

export function KeepAction({ words, onAct, disabled }: KeepActionProps) {
  return (
    <button type="button" className="plain-action" disabled={disabled} onClick={onAct}>
      {words}
    </button>
  );
}
