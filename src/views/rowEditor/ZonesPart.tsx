import { useState } from 'react';
import { neighbourId } from '../../project/edit/lists';
import { newName } from '../../project/edit/names';
import { addZone } from '../../project/edit/zoneEdits';
import type { Project } from '../../project/file/schema';
import { useFocusNext } from '../../ui/useFocusNext';
import { useFormEdit } from '../../ui/useFormEdit';
import { ZoneLine } from './ZoneLine';
import { zoneFieldId } from './zoneFieldId';
import './zones.css';

/** The zones in the ledger's order: add, rename, reorder, delete. */
export function ZonesPart({ project }: { readonly project: Project }) {
  const form = useFormEdit('zone');
  const focusNext = useFocusNext();
  /** The zone that is to be deleted once it is said where its fittings go. */
  const [leavingId, setLeavingId] = useState<string | null>(null);
  const add = (): void => {
    const names = project.zones.map(({ name }) => name);
    const answer = form.act('zones', 'Add a zone', (before) => addZone(before, newName('New zone', names)));
    const id = 'newIds' in answer ? answer.newIds[0] : undefined;
    if (id !== undefined) focusNext(zoneFieldId(id));
  };
  return (
    <div className="zones">
      <ol className="zones-list" aria-label="Zones in the ledger’s order">
        {project.zones.map((zone, i) => (
          <ZoneLine
            key={zone.id}
            project={project}
            zone={zone}
            number={i + 1}
            form={form}
            isLeaving={leavingId === zone.id}
            onLeave={(isLeaving) => {
              setLeavingId(isLeaving ? zone.id : null);
            }}
            onDeleted={() => {
              setLeavingId(null);
              focusNext(zoneFieldId(neighbourId(project.zones, zone.id) ?? ''));
            }}
          />
        ))}
      </ol>
      <button type="button" className="plain-action zones-add" onClick={add}>
        Add a zone
      </button>
      <p className="zones-said fine" role="status">
        {form.at('zones').error ?? form.said}
      </p>
    </div>
  );
}
