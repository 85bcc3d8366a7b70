import { create } from 'zustand';

export type DialogName = 'projects' | 'new' | 'keys' | 'units';

interface Shell {
  readonly dialog: DialogName | null;
}

/** Which of the page's own dialogs stands open. */
export const useShell = create<Shell>()(() => ({ dialog: null }));

export function openDialog(dialog: DialogName): void {
  useShell.setState({ dialog });
}

export function closeDialog(): void {
  useShell.setState({ dialog: null });
}
