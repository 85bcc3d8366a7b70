import type { Project, ProjectBoat, ProjectDeckStation, ProjectMethods } from '../file/schema';
import { nothingSuch, type EditAnswer } from './answer';
import { judged } from './judge';
import { freshId, withChanged, without } from './lists';
import { patched, type Patch } from './patch';

/** Changes the project's name, notes or currency. */
export function patchProject(
  project: Project,
  patch: Partial<Pick<Project, 'name' | 'notes' | 'currency'>>,
): EditAnswer {
  return judged(project, patch);
}

/** Changes any fields of the boat. Taped fittings follow her deck line. */
export function patchBoat(project: Project, patch: Patch<ProjectBoat>): EditAnswer {
  return judged(project, { boat: patched(project.boat, patch) });
}

/** Puts a station into the deck line, in its place from the stem. */
export function addDeckStation(project: Project, station: ProjectDeckStation): EditAnswer {
  const { deckLine } = project.boat;
  const next = deckLine.findIndex(({ aftOfStemM }) => aftOfStemM >= station.aftOfStemM);
  const index = next === -1 ? deckLine.length : next;
  return withDeckLine(project, [...deckLine.slice(0, index), station, ...deckLine.slice(index)]);
}

/** @param index of the station, from 0 at the stem. */
export function patchDeckStation(
  project: Project,
  index: number,
  patch: Partial<ProjectDeckStation>,
): EditAnswer {
  return withDeckLine(
    project,
    project.boat.deckLine.map((station, i) => (i === index ? { ...station, ...patch } : station)),
  );
}

/** @param index of the station, from 0 at the stem. */
export function deleteDeckStation(project: Project, index: number): EditAnswer {
  return withDeckLine(
    project,
    project.boat.deckLine.filter((_, i) => i !== index),
  );
}

function withDeckLine(project: Project, deckLine: readonly ProjectDeckStation[]): EditAnswer {
  return judged(project, { boat: { ...project.boat, deckLine } });
}

/** Changes which methods of calculation are used. */
export function patchMethods(project: Project, patch: Patch<ProjectMethods>): EditAnswer {
  return judged(project, { methods: patched(project.methods, patch) });
}

export function addSource(project: Project, text: string): EditAnswer {
  const id = freshId(project.sources, 's');
  return judged(project, { sources: [...project.sources, { id, text }] }, { newIds: [id] });
}

export function setSourceText(project: Project, id: string, text: string): EditAnswer {
  if (!project.sources.some((source) => source.id === id)) return nothingSuch('source', id);
  return judged(project, { sources: withChanged(project.sources, id, (source) => ({ ...source, text })) });
}

export function deleteSource(project: Project, id: string): EditAnswer {
  if (!project.sources.some((source) => source.id === id)) return nothingSuch('source', id);
  return judged(project, { sources: without(project.sources, new Set([id])) });
}
