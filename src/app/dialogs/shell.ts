import { create } from 'zustand';

export type DialogName = 'projects' | 'new' | 'keys' | 'units';

interface Shell {
  readonly dialog: DialogName | null;
  /** True from the making of a project until its empty ledger has taken the focus: it may be fetched first. */
  readonly isFirstStepWanted: boolean;
}

/** Which of the page's own dialogs stands open. */
export const useShell = create<Shell>()(() => ({ dialog: null, isFirstStepWanted: false }));

export function openDialog(dialog: DialogName): void {
  useShell.setState({ dialog });
}

export function wantFirstStep(isFirstStepWanted: boolean): void {
  useShell.setState({ isFirstStepWanted });
}

export function closeDialog(): void {
  useShell.setState({ dialog: null });
}
