import { flushSync } from 'react-dom';
import { create } from 'zustand';
import { goTo } from './place';

interface Swap {
  /** True while the pane is up; matters only where the page is too narrow for ledger and pane side by side. */
  readonly isSideUp: boolean;
}

/** Which of ledger and pane is up where the two swap. */
export const useSwap = create<Swap>()(() => ({ isSideUp: false }));

export function bringUp(pane: 'ledger' | 'side'): void {
  useSwap.setState({ isSideUp: pane === 'side' });
}

/** Puts the focus on the ledger's row; in a ledger without rows on its first action. */
export function goToLedger(): void {
  // What is not drawn yet takes no focus.
  flushSync(() => {
    goTo('ledger');
    bringUp('ledger');
  });
  const place = document.querySelector('.ledger-place');
  const row = place?.querySelector<HTMLElement>('[data-fitting-id][tabindex="0"]');
  (row ?? place?.querySelector<HTMLElement>('button, input'))?.focus();
}

/** Puts the focus on the pane beside the ledger. */
export function goToPane(): void {
  flushSync(() => {
    goTo('ledger');
    bringUp('side');
  });
  document.querySelector<HTMLElement>('.working-place')?.focus();
}

/** From the ledger to the pane; from anywhere else to the ledger. */
export function goAcross(): void {
  if (document.activeElement?.closest('.ledger-place') === null) goToLedger();
  else goToPane();
}
