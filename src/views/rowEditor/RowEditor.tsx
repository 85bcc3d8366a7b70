import { useEffect, useRef, type KeyboardEvent } from 'react';
import type { Project, ProjectFitting } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { UnfinishedMark } from '../../ui/fields/UnfinishedMark';
import { fittingSize } from '../../ui/fittingSize';
import { Section } from '../../ui/Section';
import { FlagsSection } from './FlagsSection';
import { NameSection } from './NameSection';
import { PlaceSection } from './PlaceSection';
import { ShapeSection } from './ShapeSection';
import { UseSection } from './UseSection';
import { useRowEdit } from './useRowEdit';
import { WindSection } from './WindSection';
import { ZonesPart } from './ZonesPart';
import './rowEditor.css';

/** The fields of the selected row. Every readable text is in force at once; Escape goes back to the row. */
export function RowEditor() {
  const project = useAppStore((state) => state.project);
  const selectedId = useAppStore((state) => state.selectedFittingId);
  const index = project?.fittings.findIndex(({ id }) => id === selectedId) ?? -1;
  const fitting = project?.fittings[index];
  if (project === null) return null;
  if (fitting === undefined) return <NoRow project={project} />;
  // The key keeps half-typed text from moving to another row.
  return <Fields key={fitting.id} project={project} fitting={fitting} number={index + 1} />;
}

/** The zones can be seen to before there is any fitting in them. */
function NoRow({ project }: { readonly project: Project }) {
  return (
    <div className="row-editor">
      <p className="muted">Pick a row of the ledger, or add a fitting: its fields stand here.</p>
      <Section head="Zones">
        <ZonesPart project={project} />
      </Section>
    </div>
  );
}

interface FieldsProps {
  readonly project: Project;
  readonly fitting: ProjectFitting;
  readonly number: number;
}

function Fields({ project, fitting, number }: FieldsProps) {
  const row = useRowEdit(fitting);
  const place = useFirstFieldFocus();
  const onKeyDown = (event: KeyboardEvent) => {
    // A field that has something to bring back stops the key on its way.
    if (event.key === 'Escape') focusRow(fitting.id);
  };
  return (
    <div className="row-editor" ref={place} onKeyDown={onKeyDown}>
      <h2 className="row-editor-title">
        <span className="row-editor-number">{number}</span> {fitting.name}{' '}
        <span className="row-editor-size">{fittingSize(fitting, project.boat)}</span>{' '}
        <UnfinishedMark within={`fitting/${fitting.id}.`} />
      </h2>
      <p className="row-editor-said fine" role="status">
        {row.said}
      </p>
      <NameSection row={row} project={project} />
      <ShapeSection row={row} />
      <PlaceSection row={row} />
      <WindSection row={row} project={project} />
      <UseSection row={row} project={project} />
      <FlagsSection row={row} />
    </div>
  );
}

/** Puts the focus into the first field when the editor was asked for by hand, however late it was loaded. */
function useFirstFieldFocus() {
  const place = useRef<HTMLDivElement>(null);
  const isWanted = useAppStore((state) => state.isFirstFieldWanted);
  useEffect(() => {
    if (!isWanted) return;
    const first = place.current?.querySelector<HTMLInputElement>('.field-input');
    first?.focus();
    first?.select();
    useAppStore.getState().reachedFirstField();
  }, [isWanted]);
  return place;
}

/** Ids are letters, digits, hyphens and underscores: they need no escape in a selector. */
function focusRow(fittingId: string): void {
  document.querySelector<HTMLElement>(`.row-pick[data-fitting-id="${fittingId}"]`)?.focus();
}
