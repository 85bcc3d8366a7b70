import { useState } from 'react';
import type { EditAnswer } from '../../project/edit/answer';
import { newName } from '../../project/edit/names';
import { moveFittings } from '../../project/edit/orderFittings';
import { addZone } from '../../project/edit/zoneEdits';
import type { Project } from '../../project/file/schema';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { Section } from '../../ui/Section';
import { useTypedTexts } from '../../state/typedTexts';
import { useFocusNext } from '../../ui/useFocusNext';
import type { RowEdit } from './useRowEdit';
import { zoneFieldId } from './zoneFieldId';
import { ZonesPart } from './ZonesPart';

/** The choice that makes a zone: no id is empty. */
const newZone = '';

export function NameSection({ row, project }: { readonly row: RowEdit; readonly project: Project }) {
  const { id, name, zoneId, note } = row.fitting;
  const [areZonesOpen, setAreZonesOpen] = useState(false);
  const isZoneWanted = useTypedTexts(({ wanted }) => wanted?.startsWith('zone/') ?? false);
  // A line elsewhere leads to a zone's name, which is on the page only while the zones are unfolded.
  if (isZoneWanted && !areZonesOpen) setAreZonesOpen(true);
  const focusNext = useFocusNext();
  const chooseZone = (chosenId: string): void => {
    const answer = row.run('zoneId', 'zone', (before) =>
      chosenId === newZone ? intoNewZone(before, id, zoneId) : moveFittings(before, [id], chosenId, null),
    );
    const madeId = 'newIds' in answer ? answer.newIds[0] : undefined;
    if (madeId === undefined) return;
    setAreZonesOpen(true);
    focusNext(zoneFieldId(madeId));
  };
  return (
    <Section head="Name and zone">
      <div className="row-editor-name">
        <TextField
          label="Name"
          kind="name"
          value={name}
          onCommit={(next) => {
            row.patch('name', 'name', { name: next });
          }}
          {...row.at('name')}
        />
      </div>
      <ChoiceField
        label="Zone"
        choices={[
          ...project.zones.map((each) => ({ value: each.id, label: each.name })),
          { value: newZone, label: 'a new zone' },
        ]}
        value={zoneId}
        onCommit={chooseZone}
        {...row.at('zoneId')}
      />
      <details
        open={areZonesOpen}
        onToggle={(event) => {
          setAreZonesOpen(event.currentTarget.open);
        }}
      >
        <summary>Name, order or delete the zones</summary>
        {areZonesOpen && <ZonesPart project={project} />}
      </details>
      <NoteField
        label="Note"
        kind="note"
        rows={2}
        value={note}
        onCommit={(next) => {
          row.patch('note', 'note', { note: next });
        }}
        {...row.at('note')}
      />
    </Section>
  );
}

/** Makes a zone after the fitting's own and moves the fitting there. */
function intoNewZone(project: Project, fittingId: string, zoneId: string): EditAnswer {
  const names = project.zones.map(({ name }) => name);
  const added = addZone(project, newName('New zone', names), zoneId);
  if ('refused' in added) return added;
  const moved = moveFittings(added.project, [fittingId], added.newIds?.[0] ?? zoneId, null);
  return 'refused' in moved ? moved : { ...moved, newIds: added.newIds ?? [] };
}
