import type { EditAnswer } from '../../project/edit/answer';
import { newName } from '../../project/edit/names';
import { moveFittings } from '../../project/edit/orderFittings';
import { addZone, renameZone } from '../../project/edit/zoneEdits';
import type { Project } from '../../project/file/schema';
import { ChoiceField } from '../../ui/fields/ChoiceField';
import { NoteField, TextField } from '../../ui/fields/TextField';
import { Section } from './Section';
import type { RowEdit } from './useRowEdit';

/** The choice that makes a zone: no id is empty. */
const newZone = '';

export function NameSection({ row, project }: { readonly row: RowEdit; readonly project: Project }) {
  const { id, name, zoneId, note } = row.fitting;
  const { zones } = project;
  const zone = zones.find((each) => each.id === zoneId);
  return (
    <Section head="Name and zone">
      <TextField
        label="Name"
        kind="name"
        value={name}
        onCommit={(next) => {
          row.patch('name', 'name', { name: next });
        }}
        {...row.at('name')}
      />
      <ChoiceField
        label="Zone"
        choices={[
          ...zones.map((each) => ({ value: each.id, label: each.name })),
          { value: newZone, label: 'a new zone' },
        ]}
        value={zoneId}
        onCommit={(next) => {
          row.run('zoneId', 'zone', (before) =>
            next === newZone ? intoNewZone(before, id, zoneId) : moveFittings(before, [id], next, null),
          );
        }}
        {...row.at('zoneId')}
      />
      <TextField
        label="Name of the zone"
        key={zoneId}
        kind="name"
        value={zone?.name ?? ''}
        onCommit={(next) => {
          row.run('zone.name', 'zone’s name', (before) => renameZone(before, zoneId, next));
        }}
        {...row.at('zone.name')}
      />
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
  return moveFittings(added.project, [fittingId], added.newIds?.[0] ?? zoneId, null);
}
