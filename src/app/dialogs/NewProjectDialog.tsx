import type { SyntheticEvent } from 'react';
import { create } from 'zustand';
import { newProject, type BoatOutline } from '../../project/catalogue/newProject';
import { useAppStore } from '../../state/appStore';
import { QuantityField } from '../../ui/fields/QuantityField';
import { TextField } from '../../ui/fields/TextField';
import { usePlace } from '../place';
import { bringUp } from '../swap';
import { Dialog } from './Dialog';
import { closeDialog, wantFirstStep } from './shell';

/** A yacht of a usual size, to be typed over. */
const usual: BoatOutline = { name: 'My boat', lengthM: 12, beamM: 3.9, draughtM: 2.3, mastTopM: 18.5 };

/** The project file's own limits, in metres. */
const sizes = [
  { key: 'lengthM', label: 'Length of the hull', range: { fromSi: 1, toSi: 200 } },
  { key: 'beamM', label: 'Largest beam', range: { fromSi: 0.1, toSi: 100 } },
  { key: 'draughtM', label: 'Draught', range: { fromSi: 0.05, toSi: 50 } },
  { key: 'mastTopM', label: 'Mast top above the water', range: { fromSi: 0, toSi: 150 } },
] as const;

/** What was typed stays when the dialog is closed, until a project is made of it. */
const useOutline = create<BoatOutline>()(() => usual);

/** Half-typed text is kept by these names; it is no project's, so that no line leads back to it. */
const typedFor = (key: keyof BoatOutline): string => `new/boat.${key}`;

/** The five numbers that somebody knows of a boat, and a project to start from. */
export function NewProjectDialog() {
  const outline = useOutline();
  const make = (event: SyntheticEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const wrong = event.currentTarget.querySelector<HTMLElement>('[aria-invalid="true"]');
    if (wrong !== null) {
      wrong.focus();
      return;
    }
    useAppStore.getState().openNew(newProject(outline));
    useOutline.setState(usual);
    closeDialog();
    // Where ledger and pane swap: the first step stands in the ledger.
    bringUp('ledger');
    if (usePlace.getState().place === 'ledger') wantFirstStep(true);
  };
  return (
    <Dialog title="New project" onClose={closeDialog}>
      <p>
        Type what you know of the boat, in any unit; all of it can be changed later. What is open now stays
        saved.
      </p>
      <form className="new-project" onSubmit={make} noValidate>
        <TextField
          kind="name"
          label="Name"
          value={outline.name}
          typedFor={typedFor('name')}
          onCommit={(name) => {
            useOutline.setState({ name });
          }}
        />
        {sizes.map(({ key, label, range }) => (
          <QuantityField
            key={key}
            label={label}
            dimension="length"
            unit="m"
            range={range}
            valueSi={outline[key]}
            typedFor={typedFor(key)}
            onCommit={(valueM) => {
              useOutline.setState({ [key]: valueM });
            }}
          />
        ))}
        <div className="dialog-actions">
          <button type="submit" className="plain-action">
            Make the project
          </button>
        </div>
      </form>
    </Dialog>
  );
}
