/** Any edit of any project: a table of every named edit, each fed with numbers that pick what it is about. */
import fc from 'fast-check';
import type { EditAnswer } from '../../../src/project/edit/answer';
import { changeShapeKind } from '../../../src/project/edit/changeShapeKind';
import { changeWindKind } from '../../../src/project/edit/changeWindKind';
import * as conditions from '../../../src/project/edit/conditionEdits';
import { deleteFittings } from '../../../src/project/edit/deleteFittings';
import * as fittings from '../../../src/project/edit/fittingEdits';
import * as items from '../../../src/project/edit/itemEdits';
import * as itemParts from '../../../src/project/edit/itemPartEdits';
import { moveFittings, shiftFitting } from '../../../src/project/edit/orderFittings';
import { changePlacementKind, setRowCount } from '../../../src/project/edit/placementEdits';
import * as plans from '../../../src/project/edit/planEdits';
import * as profile from '../../../src/project/edit/profileEdits';
import * as whole from '../../../src/project/edit/projectEdits';
import * as zones from '../../../src/project/edit/zoneEdits';
import { checkProject } from '../../../src/project/file/openProject';
import type { ItemChange, Project } from '../../../src/project/file/schema';
import { arbitraryProject } from '../file/arbitraryProject';

/** Numbers that pick: `a`, `b` and `c` an element of a list each, `amount` a size from 0 to 1. */
interface Picks {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly amount: number;
}

type Edit = (project: Project, picks: Picks) => EditAnswer;

/** The id of the picked element; one that is not there when the list is empty, which an edit has to bear. */
function idIn(list: readonly { readonly id: string }[], pick: number): string {
  return list[pick % Math.max(list.length, 1)]?.id ?? 'nobody';
}

function idOrNull(list: readonly { readonly id: string }[], pick: number): string | null {
  return pick % (list.length + 1) === list.length ? null : idIn(list, pick);
}

function itemsOf(project: Project, pick: number) {
  return project.plans[pick % Math.max(project.plans.length, 1)]?.items ?? [];
}

const shapeKinds = [
  'roundBar',
  'wire',
  'ellipticalBar',
  'rectangularBar',
  'fairing',
  'sphere',
  'net',
  'measuredArea',
  'bluffBody',
] as const;
const changeKinds: readonly ItemChange['kind'][] = [
  'slimmer',
  'shapeOf',
  'retracted',
  'stowed',
  'removed',
  'moved',
  'sheltered',
  'typed',
];
const kindOf = <Kind>(kinds: readonly Kind[], pick: number): Kind => {
  const kind = kinds[pick % kinds.length];
  if (kind === undefined) throw new Error('no kinds');
  return kind;
};

export const edits: Readonly<Record<string, Edit>> = {
  addFitting: (p, { a, b }) => {
    const model = p.fittings[a % Math.max(p.fittings.length, 1)];
    return model === undefined
      ? { project: p }
      : fittings.addFitting(p, { ...model, name: 'Added' }, idOrNull(p.fittings, b));
  },
  duplicateFittings: (p, { a, b }) =>
    fittings.duplicateFittings(p, [idIn(p.fittings, a), idIn(p.fittings, b)]),
  rename: (p, { a, amount }) => fittings.patchFitting(p, idIn(p.fittings, a), { name: `Name ${amount}` }),
  blankName: (p, { a }) => fittings.patchFitting(p, idIn(p.fittings, a), { name: ' ' }),
  diameter: (p, { a, amount }) => {
    const round = p.fittings.filter(({ shape }) => shape.kind === 'roundBar' || shape.kind === 'sphere');
    const patch = { shape: { diameter: { m: amount } } } as Parameters<typeof fittings.patchFitting>[2];
    return fittings.patchFitting(p, idIn(round, a), patch);
  },
  toZone: (p, { a, b }) => fittings.patchFitting(p, idIn(p.fittings, a), { zoneId: idIn(p.zones, b) }),
  shelter: (p, { a, b }) =>
    fittings.patchFitting(p, idIn(p.fittings, a), { shelteredByFittingId: idOrNull(p.fittings, b) }),
  exposure: (p, { a, amount }) =>
    fittings.patchFitting(p, idIn(p.fittings, a), { exposure: { best: amount } }),
  duty: (p, { a, b, amount }) =>
    fittings.setDutyInCondition(p, idIn(p.fittings, a), idIn(p.conditions, b), amount === 0 ? null : amount),
  pair: (p, { a, b }) => fittings.patchFitting(p, idIn(p.fittings, a), { placement: { pair: b % 2 === 0 } }),
  flags: (p, { a, b }) =>
    fittings.patchFitting(p, idIn(p.fittings, a), { flags: { safetyRequired: b % 2 === 0 } }),
  mass: (p, { a, amount }) => fittings.patchFitting(p, idIn(p.fittings, a), { massKg: -0 * amount }),
  exclude: (p, { a, b }) => fittings.excludeFittings(p, [idIn(p.fittings, a), idIn(p.fittings, b)], 'sold'),
  include: (p, { a, b }) => fittings.includeFittings(p, [idIn(p.fittings, a), idIn(p.fittings, b)]),
  deleteFittings: (p, { a, b }) => deleteFittings(p, [idIn(p.fittings, a), idIn(p.fittings, b)]),
  moveFittings: (p, { a, b, c }) =>
    moveFittings(p, [idIn(p.fittings, a), idIn(p.fittings, b)], idIn(p.zones, b), idOrNull(p.fittings, c)),
  shiftFitting: (p, { a, b }) => shiftFitting(p, idIn(p.fittings, a), b % 2 === 0 ? 1 : -1),
  shapeKind: (p, { a, b }) => changeShapeKind(p, idIn(p.fittings, a), kindOf(shapeKinds, b)),
  placementKind: (p, { a, b }) =>
    changePlacementKind(p, idIn(p.fittings, a), kindOf(['taped', 'endPoints'] as const, b)),
  rowCount: (p, { a, b }) => setRowCount(p, idIn(p.fittings, a), b % 8),
  addZone: (p, { a }) => zones.addZone(p, 'Zone', idOrNull(p.zones, a)),
  renameZone: (p, { a }) => zones.renameZone(p, idIn(p.zones, a), 'Named anew'),
  moveZone: (p, { a, b }) => zones.moveZone(p, idIn(p.zones, a), idOrNull(p.zones, b)),
  deleteZone: (p, { a }) => zones.deleteZone(p, idIn(p.zones, a)),
  deleteZoneInto: (p, { a, b }) => zones.deleteZoneInto(p, idIn(p.zones, a), idIn(p.zones, b)),
  addCondition: (p, { a }) =>
    conditions.addCondition(p, conditions.plainCondition(p), idOrNull(p.conditions, a)),
  duplicateCondition: (p, { a }) => conditions.duplicateCondition(p, idIn(p.conditions, a)),
  heel: (p, { a, amount }) =>
    conditions.patchCondition(p, idIn(p.conditions, a), { heelDeg: 100 * amount - 20 }),
  windKind: (p, { a, b }) =>
    changeWindKind(p, idIn(p.conditions, a), kindOf(['true', 'instrument'] as const, b)),
  moveCondition: (p, { a, b }) =>
    conditions.moveCondition(p, idIn(p.conditions, a), idOrNull(p.conditions, b)),
  deleteCondition: (p, { a }) => conditions.deleteCondition(p, idIn(p.conditions, a)),
  setHours: (p, { a, amount }) => profile.setHours(p, idIn(p.conditions, a), 10 * amount),
  removeFromProfile: (p, { a }) => profile.removeFromProfile(p, idIn(p.conditions, a)),
  renameProfile: (p) => profile.renameProfile(p, 'Round the isles'),
  deleteProfile: (p) => profile.deleteProfile(p),
  addPlan: (p, { a }) => plans.addPlan(p, idOrNull(p.plans, a)),
  duplicatePlan: (p, { a }) => plans.duplicatePlan(p, idIn(p.plans, a)),
  patchPlan: (p, { a }) => plans.patchPlan(p, idIn(p.plans, a), { name: 'Winter', note: 'one\ntwo' }),
  movePlan: (p, { a, b }) => plans.movePlan(p, idIn(p.plans, a), idOrNull(p.plans, b)),
  deletePlan: (p, { a }) => plans.deletePlan(p, idIn(p.plans, a)),
  addItem: (p, { a, b, c }) =>
    items.addItem(p, idIn(p.plans, a), idIn(p.fittings, b), kindOf(changeKinds, c)),
  patchItem: (p, { a, b, amount }) =>
    items.patchItem(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), {
      cost: 1000 * amount,
      massChangeKg: -amount,
    }),
  itemFitting: (p, { a, b, c }) =>
    items.patchItem(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), { fittingId: idIn(p.fittings, c) }),
  itemKind: (p, { a, b, c }) =>
    items.changeItemKind(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), kindOf(changeKinds, c)),
  itemAbout: (p, { a, b, c }) =>
    itemParts.changeItemFitting(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), idIn(p.fittings, c)),
  itemPlacementKind: (p, { a, b, c }) =>
    itemParts.changeItemPlacementKind(
      p,
      idIn(p.plans, a),
      idIn(itemsOf(p, a), b),
      kindOf(['taped', 'endPoints'] as const, c),
    ),
  itemRowCount: (p, { a, b, c }) =>
    itemParts.setItemRowCount(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), c % 8),
  itemShapeKind: (p, { a, b, c }) =>
    itemParts.changeItemShapeKind(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), kindOf(shapeKinds, c)),
  itemDuty: (p, { a, b, c, amount }) =>
    itemParts.setItemDutyInCondition(
      p,
      idIn(p.plans, a),
      idIn(itemsOf(p, a), b),
      idIn(p.conditions, c),
      amount === 0 ? null : amount,
    ),
  switchItem: (p, { a, b, c }) => items.switchItem(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), c % 2 === 0),
  safetyReason: (p, { a, b, c }) =>
    items.setSafetyReason(
      p,
      idIn(p.plans, a),
      idIn(itemsOf(p, a), b),
      c % 2 === 0 ? null : { person: 'B. Person', reason: 'holds as much' },
    ),
  duplicateItem: (p, { a, b }) => items.duplicateItem(p, idIn(p.plans, a), idIn(itemsOf(p, a), b)),
  moveItem: (p, { a, b, c }) =>
    items.moveItem(p, idIn(p.plans, a), idIn(itemsOf(p, a), b), idOrNull(itemsOf(p, a), c)),
  deleteItems: (p, { a, b }) => items.deleteItems(p, idIn(p.plans, a), [idIn(itemsOf(p, a), b)]),
  patchProject: (p, { amount }) => whole.patchProject(p, { name: `Project ${amount}`, currency: 'CHF' }),
  patchBoat: (p, { amount }) => whole.patchBoat(p, { draughtM: amount, mast: { aftOfStemM: 4 + amount } }),
  addStation: (p, { amount }) =>
    whole.addDeckStation(p, { aftOfStemM: 12 * amount, freeboardM: 1.2, halfBeamM: 1 }),
  patchStation: (p, { a, amount }) => whole.patchDeckStation(p, a % 3, { freeboardM: 1 + amount }),
  deleteStation: (p, { a }) => whole.deleteDeckStation(p, a % p.boat.deckLine.length),
  patchMethods: (p, { a, amount }) =>
    whole.patchMethods(p, {
      windLaw: kindOf([{ kind: 'uniform' } as const, { kind: 'power', exponent: amount } as const], a),
    }),
  addSource: (p) => whole.addSource(p, 'a tape'),
  setSourceText: (p, { a }) => whole.setSourceText(p, idIn(p.sources, a), 'another tape'),
  deleteSource: (p, { a }) => whole.deleteSource(p, idIn(p.sources, a)),
};

/** Any project as opening a file hands it over: checked, and its keys in the file's order. */
export const opened: fc.Arbitrary<Project> = arbitraryProject.map((project) => {
  const checked = checkProject(project);
  if (!checked.ok) throw new Error(JSON.stringify(checked.errors));
  return checked.value;
});

export interface AnyEdit {
  readonly name: string;
  readonly picks: Picks;
}

export const anyEdit: fc.Arbitrary<AnyEdit> = fc.record({
  name: fc.constantFrom(...Object.keys(edits)),
  picks: fc.record({
    a: fc.nat(20),
    b: fc.nat(20),
    c: fc.nat(20),
    amount: fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100),
  }),
});

export function run(project: Project, { name, picks }: AnyEdit): EditAnswer {
  const edit = edits[name];
  if (edit === undefined) throw new Error(`no edit ${name}`);
  return edit(project, picks);
}

/** Makes any attempt to change a value in place throw. */
export function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
