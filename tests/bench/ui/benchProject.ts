import { catalogue, fittingFromCatalogue } from '../../../src/project/catalogue/catalogue';
import { newProject } from '../../../src/project/catalogue/newProject';
import { blankItem, blankPlan } from '../../../src/project/file/blankParts';
import { saveProject } from '../../../src/project/file/saveProject';
import type {
  ItemChange,
  Project,
  ProjectFitting,
  ProjectShape,
  RefitItem,
} from '../../../src/project/file/schema';

export const fittingCount = 200;

/** The bar whose diameter is edited: no item of the plan touches it. */
export const editedName = 'Bar under test';
/** What the bench types stands on these, so that its first key is an edit already. */
const editedDiameterM = 0.02;

const outline = { name: 'Bench', lengthM: 18, beamM: 5.2, draughtM: 4, mastTopM: 27 };

/**
 * A boat with 200 rows: the whole catalogue, then again in less wind, a plan of ten items, one condition.
 * @returns the text of its file, which passes every check of opening.
 */
export function benchProjectText(): string {
  const base = newProject(outline);
  const fittings = Array.from({ length: fittingCount }, (_, i) => fittingAt(base, i));
  const saved = saveProject({ ...base, fittings, plans: [planFor(fittings)] });
  if (!saved.ok) throw new Error(`the bench project does not pass: ${JSON.stringify(saved.errors)}`);
  return saved.text;
}

function fittingAt(base: Project, index: number): ProjectFitting {
  const entry = catalogue[index % catalogue.length];
  if (entry === undefined) throw new Error('the catalogue is empty');
  const round = Math.floor(index / catalogue.length);
  const fitting = fittingFromCatalogue(entry.id, base.boat, entry.zone, `row-${index + 1}`);
  if (round === 0) return index === editedIndex ? editedFrom(fitting) : fitting;
  return { ...slowed(fitting, 0.9 ** round), name: `${fitting.name} ${round + 1}` };
}

const editedIndex = catalogue.findIndex(({ id }) => id === 'stanchions');

function editedFrom(fitting: ProjectFitting): ProjectFitting {
  const { shape } = fitting;
  if (shape.kind !== 'roundBar') throw new Error(`${fitting.name} is no round bar`);
  return {
    ...fitting,
    name: editedName,
    shape: { ...shape, diameter: { ...shape.diameter, m: editedDiameterM } },
  };
}

/** In less wind: like the first of its kind, and yet a row with figures of its own. */
function slowed(fitting: ProjectFitting, factor: number): ProjectFitting {
  const { best, low, high, source } = fitting.exposure;
  const exposure = { best: factor * best, low: factor * low, high: factor * high, source };
  return { ...fitting, exposure };
}

/** Ten items of several kinds, on rows that need no reason. */
function planFor(fittings: readonly ProjectFitting[]): Project['plans'][number] {
  const free = fittings.filter(({ name, flags }) => name !== editedName && !flags.safetyRequired);
  const bars = free.filter(({ shape }) => shape.kind === 'roundBar');
  const others = free.filter(({ shape }) => shape.kind !== 'roundBar');
  const slimmed = bars.slice(0, 4).map((bar, i) => itemFor(bar, slimmer(bar.shape), i));
  const changed = others.slice(0, otherChanges.length).map((fitting, i) => {
    return itemFor(fitting, otherChanges[i] ?? { kind: 'removed' }, slimmed.length + i);
  });
  return blankPlan({ id: 'refit', name: 'Refit', items: [...slimmed, ...changed] });
}

const otherChanges: readonly ItemChange[] = [
  { kind: 'removed' },
  { kind: 'stowed', stowed: null },
  { kind: 'retracted', dutyFraction: { default: 0.5, byCondition: [] }, stowed: null },
  { kind: 'retracted', dutyFraction: { default: 0.2, byCondition: [] }, stowed: null },
  {
    kind: 'sheltered',
    exposure: { best: 0.6, low: 0.4, high: 0.8, source: 'the bench' },
    exposureLeeward: null,
    shelteredByFittingId: null,
  },
  { kind: 'removed' },
];

function slimmer(shape: ProjectShape): ItemChange {
  if (shape.kind !== 'roundBar') return { kind: 'removed' };
  return { kind: 'slimmer', diameter: { m: 0.7 * shape.diameter.m, basis: 'drawing' } };
}

function itemFor({ id, name }: ProjectFitting, change: ItemChange, index: number): RefitItem {
  const massChangeKg = index - 5;
  return blankItem({
    id: `item-${index + 1}`,
    name: `${name}, changed`,
    fittingId: id,
    massChangeKg,
    cost: 100 * index,
    change,
  });
}
