import { useEffect, useId, useRef, useState } from 'react';
import { deleteZone, deleteZoneInto, moveZone, renameZone } from '../../project/edit/zoneEdits';
import type { Project, ProjectZone } from '../../project/file/schema';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { TextField } from '../../ui/fields/TextField';
import { MoveButtons, moveKeys } from '../../ui/MoveButtons';
import type { FormEdit } from '../../ui/useFormEdit';
import { formatValue } from '../../units/print';
import { zoneFieldId } from './zoneFieldId';

interface ZoneLineProps {
  readonly project: Project;
  readonly zone: ProjectZone;
  readonly number: number;
  readonly form: FormEdit;
  /** True while it is asked where the zone's fittings go. */
  readonly isLeaving: boolean;
  readonly onLeave: (isLeaving: boolean) => void;
  readonly onDeleted: () => void;
}

/** One zone: its name, how much it holds, and what can be done with it. */
export function ZoneLine({ project, zone, number, form, isLeaving, onLeave, onDeleted }: ZoneLineProps) {
  const { id, name } = zone;
  const deleteButton = useRef<HTMLButtonElement>(null);
  const heldCount = project.fittings.filter(({ zoneId }) => zoneId === id).length;
  const field = `${id}.name`;
  const move = {
    list: project.zones,
    id,
    onMove: (beforeId: string | null, way: string): void => {
      form.act('zones', `Move the zone ${name} ${way}`, (before) => moveZone(before, id, beforeId));
    },
  };
  const remove = (): void => {
    if (heldCount > 0 && project.zones.length > 1) {
      onLeave(true);
      return;
    }
    const answer = form.act(field, `Delete the zone ${name}`, (before) => deleteZone(before, id));
    if (!('refused' in answer)) onDeleted();
  };
  return (
    <li className="zone-line" onKeyDown={moveKeys(move)}>
      <TextField
        id={zoneFieldId(id)}
        label={`Name of zone ${number}`}
        labelHidden
        kind="name"
        value={name}
        onCommit={(next) => {
          form.run(field, `Rename the zone ${name}`, (before) => renameZone(before, id, next));
        }}
        {...form.at(field)}
      />
      <span className="zone-count muted">{heldText(heldCount)}</span>
      <span className="zone-actions">
        <MoveButtons {...move} what={name} isShort />
        <button
          ref={deleteButton}
          type="button"
          className="plain-action"
          aria-label={`Delete ${name}`}
          onClick={remove}
        >
          delete
        </button>
      </span>
      {isLeaving && (
        <WhereTo
          project={project}
          zone={zone}
          heldCount={heldCount}
          form={form}
          onKeep={() => {
            onLeave(false);
            deleteButton.current?.focus();
          }}
          onDeleted={onDeleted}
        />
      )}
    </li>
  );
}

function heldText(count: number): string {
  if (count === 0) return 'empty';
  return count === 1 ? '1 fitting' : `${formatValue(count, '1', { decimals: 0 })} fittings`;
}

interface WhereToProps extends Pick<ZoneLineProps, 'project' | 'zone' | 'form' | 'onDeleted'> {
  readonly heldCount: number;
  readonly onKeep: () => void;
}

/** A zone that holds fittings goes only once it is said where they are to stand. */
function WhereTo({ project, zone, heldCount, form, onKeep, onDeleted }: WhereToProps) {
  const others = project.zones.filter(({ id }) => id !== zone.id);
  const [chosenId, setChosenId] = useState(others[0]?.id ?? '');
  const choiceId = useId();
  useEffect(() => {
    document.getElementById(choiceId)?.focus();
  }, [choiceId]);
  return (
    <div className="zone-where">
      <ChoiceField
        id={choiceId}
        label={`Move its ${heldText(heldCount)} to`}
        choices={others.map(({ id, name }) => ({ value: id, label: name }))}
        value={chosenId}
        onCommit={setChosenId}
      />
      <span className="zone-actions">
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            const answer = form.act('zones', `Delete the zone ${zone.name}`, (before) =>
              deleteZoneInto(before, zone.id, chosenId),
            );
            if (!('refused' in answer)) onDeleted();
          }}
        >
          Move and delete
        </button>
        <button type="button" className="plain-action" onClick={onKeep}>
          Keep the zone
        </button>
      </span>
    </div>
  );
}
