import { fittingFromCatalogue, suggestedZoneId } from '../../project/catalogue/catalogue';
import type { CatalogueEntry } from '../../project/catalogue/catalogueEntry';
import type { EditAnswer } from '../../project/edit/answer';
import { addFitting } from '../../project/edit/fittingEdits';
import { addZone } from '../../project/edit/zoneEdits';
import type { Project, ProjectFitting } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { fittingFromBlank, type Blank } from './blankFittings';

/** Adds a fitting of the catalogue, with its usual sizes, into the zone where it belongs. Answers like every edit. */
export function addEntry(entry: CatalogueEntry): EditAnswer {
  return add(entry.name, (project) => {
    const zoneId = suggestedZoneId(entry.zone, project.zones);
    return zoneId === null ? null : fittingFromCatalogue(entry.id, project.boat, zoneId, 'new');
  });
}

/** Adds a blank one, into the zone of the selected row. */
export function addBlank(blank: Blank): EditAnswer {
  const { selectedFittingId } = useAppStore.getState();
  return add(blank.name, (project) => {
    const selected = project.fittings.find(({ id }) => id === selectedFittingId);
    const zoneId = selected?.zoneId ?? project.zones[0]?.id;
    return zoneId === undefined ? null : fittingFromBlank(blank, project, zoneId);
  });
}

/** @param make the fitting, its id to be replaced; null while there is no zone for it to go to. */
function add(name: string, make: (project: Project) => ProjectFitting | null): EditAnswer {
  const store = useAppStore.getState();
  let newId: string | undefined;
  const answer = store.edit(`Add ${name}`, (before) => {
    const zoned = before.zones.length > 0 ? { project: before } : addZone(before, 'Deck');
    if ('refused' in zoned) return zoned;
    const fitting = make(zoned.project);
    if (fitting === null) return zoned;
    const added = addFitting(zoned.project, fitting);
    if (!('refused' in added)) newId = added.newIds?.[0];
    return added;
  });
  if (newId !== undefined) {
    store.select(newId);
    store.openEdit();
  }
  return answer;
}
