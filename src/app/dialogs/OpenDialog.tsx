import type { ReactNode } from 'react';
import { useAppStore } from '../../state/appStore';
import { LazyPart, type Loader } from '../LazyPart';
import { loadAddFitting } from '../lazyPanes';
import { Dialog } from './Dialog';
import { closeDialog, useShell, type DialogName } from './shell';

const loaders: Readonly<Record<DialogName, Loader<object>>> = {
  projects: async () => (await import('./ProjectsDialog')).ProjectsDialog,
  new: async () => (await import('./NewProjectDialog')).NewProjectDialog,
  keys: async () => (await import('./KeysDialog')).KeysDialog,
  units: async () => (await import('./UnitsDialog')).UnitsDialog,
};

const names: Readonly<Record<DialogName, string>> = {
  projects: 'The list of projects',
  new: 'The new project',
  keys: 'The sheet of keys',
  units: 'The choice of units',
};

const noProps = {};

const addFittingProps = {
  onClose: () => {
    useAppStore.getState().setAdding(false);
  },
};

/** The dialog that stands open, if one does. */
export function OpenDialog() {
  const dialog = useShell((state) => state.dialog);
  const isAdding = useAppStore((state) => state.isAdding);
  if (isAdding) {
    return (
      <LazyPart
        load={loadAddFitting}
        props={addFittingProps}
        name="The list of fittings"
        frame={NotLoadedDialog}
      />
    );
  }
  if (dialog === null) return null;
  return (
    <LazyPart
      key={dialog}
      load={loaders[dialog]}
      props={noProps}
      name={names[dialog]}
      frame={NotLoadedDialog}
    />
  );
}

/** What opens in place of a dialog that did not come. */
function NotLoadedDialog({ children }: { readonly children: ReactNode }) {
  return (
    <Dialog title="Not loaded" onClose={closeEither}>
      {children}
    </Dialog>
  );
}

function closeEither(): void {
  addFittingProps.onClose();
  closeDialog();
}
