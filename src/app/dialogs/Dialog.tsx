import { useId, useLayoutEffect, useRef, type ReactNode } from 'react';
import './dialogs.css';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/**
 * A native dialog over the page: it holds the focus, closes with Escape and gives the focus back. One with a form begins
 * in its first field, whose text is selected to be typed over; Enter would close it elsewhere.
 */
export function Dialog({ title, onClose, children }: DialogProps) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  // Before the next paint, and on the way out before the element goes: a dialog gives the focus back when it closes.
  useLayoutEffect(() => {
    const dialog = ref.current;
    if (dialog?.open === false) {
      dialog.showModal();
      const first = dialog.querySelector<HTMLInputElement>('form input[type="text"]');
      first?.focus();
      first?.select();
    }
    return () => {
      dialog?.close();
    };
  }, []);
  const closedByBrowser = (): void => {
    if (ref.current?.open !== true) onClose();
  };
  return (
    <dialog ref={ref} className="dialog" aria-labelledby={titleId} onClose={closedByBrowser}>
      <div className="dialog-head">
        <h2 id={titleId}>{title}</h2>
        <button type="button" className="plain-action" onClick={onClose}>
          Close
        </button>
      </div>
      {children}
    </dialog>
  );
}
