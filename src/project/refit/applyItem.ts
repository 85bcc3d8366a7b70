import type {
  Project,
  ProjectDimension,
  ProjectFitting,
  ProjectPoint,
  ProjectShape,
  RefitItem,
} from '../file/schema';
import { isMember, isRound, roughnessOf } from '../file/shapeKinds';
import type { FittingState, PartOwners } from '../core/fittingState';

/** Fittings of a project by id, as they stand after some items. Excluded fittings are not among them. */
export type FittingStates = ReadonlyMap<string, FittingState>;

/** Why an item cannot be applied: the field of the item it is about, and a sentence for the reader. */
export interface Contradiction {
  readonly field: string;
  readonly message: string;
}

export type Applied =
  | { readonly ok: true; readonly state: FittingState }
  | { readonly ok: false; readonly contradiction: Contradiction };

/**
 * Applies one item to the state its fitting has by then. Items act on the result of the ones before; what the earlier
 * ones make impossible is a contradiction, said beside the item, and the item is passed over.
 * @param planId names the owner of the parts the item brings.
 */
export function applyItem(project: Project, planId: string, item: RefitItem, states: FittingStates): Applied {
  const state = states.get(item.fittingId);
  if (state === undefined) return contradiction('fittingId', excludedMessage(project, item.fittingId));
  const name = state.fitting.name;
  if (state.gone === 'removed') return contradiction('fittingId', `An earlier item has removed ${name}.`);
  if (state.gone === 'stowed' && item.change.kind !== 'removed') {
    return contradiction(
      'fittingId',
      `An earlier item has stowed ${name} for good; only its removal is left.`,
    );
  }
  return remembered(state, item, `${planId}/${item.id}`, states);
}

interface Remembered {
  readonly owner: string;
  readonly other: FittingState | undefined;
  readonly answer: Applied;
}

const known = new WeakMap<FittingState, WeakMap<RefitItem, Remembered>>();

/** The same item on the same state gives the same state, so that a row that an edit left alone is known. */
function remembered(state: FittingState, item: RefitItem, owner: string, states: FittingStates): Applied {
  const other = states.get(otherFittingId(item) ?? '');
  const ofState = known.get(state) ?? new WeakMap<RefitItem, Remembered>();
  known.set(state, ofState);
  const last = ofState.get(item);
  if (last !== undefined && last.owner === owner && last.other === other) return last.answer;
  const answer = changed(state, item.change, owner, states);
  ofState.set(item, { owner, other, answer });
  return answer;
}

/** The other fitting that an item looks at. */
function otherFittingId({ change }: RefitItem): string | null {
  if (change.kind === 'shapeOf') return change.fittingId;
  return change.kind === 'sheltered' ? change.shelteredByFittingId : null;
}

function contradiction(field: string, message: string): Applied {
  return { ok: false, contradiction: { field, message } };
}

function excludedMessage(project: Project, fittingId: string): string {
  const fitting = project.fittings.find(({ id }) => id === fittingId);
  return fitting === undefined
    ? `There is no fitting ${fittingId}.`
    : `${fitting.name} is left out of the sums; take it in first.`;
}

/** The state after a change, whoever brings it; see {@link applyItem} for what keeps an item from being applied. */
export function changed(
  state: FittingState,
  change: RefitItem['change'],
  owner: string,
  states: FittingStates,
): Applied {
  const { fitting } = state;
  switch (change.kind) {
    case 'removed':
      return applied({ ...state, gone: 'removed' });
    case 'stowed':
      return applied({
        ...state,
        fitting: { ...fitting, dutyFraction: never, stowed: change.stowed },
        owners: { ...state.owners, stowed: owner },
        gone: 'stowed',
      });
    case 'retracted':
      return applied({
        ...state,
        fitting: { ...fitting, dutyFraction: change.dutyFraction, stowed: change.stowed },
        owners: { ...state.owners, stowed: owner },
      });
    case 'slimmer':
      return slimmed(state, change.diameter, owner);
    case 'shapeOf':
      return shapedLike(state, states.get(change.fittingId), change.fittingId);
    case 'typed':
      return withShape(state, change.shape, { size: owner, coefficient: owner }, 'change.shape');
    case 'moved':
      if (isMember(fitting.shape) && lengthOf(change.placement) === 0) {
        return contradiction('change.placement', 'A bar needs a length.');
      }
      return moved(state, change.placement, owner);
    case 'sheltered':
      return sheltered(state, change, owner, states);
  }
}

const never = { default: 0, byCondition: [] } as const;

function applied(state: FittingState): Applied {
  return { ok: true, state };
}

function slimmed(state: FittingState, diameter: ProjectDimension, owner: string): Applied {
  const { shape } = state.fitting;
  if (!isRound(shape)) {
    return contradiction(
      'change.diameter',
      `${state.fitting.name} is no round bar or wire and has no diameter to slim.`,
    );
  }
  if (diameter.m >= shape.diameter.m) {
    return contradiction(
      'change.diameter',
      `The new diameter is not smaller than the one ${state.fitting.name} has by then.`,
    );
  }
  if (shape.kind === 'roundBar' && roughnessOf(shape.surface) > diameter.m / 2) {
    return contradiction(
      'change.diameter',
      `The surface of ${state.fitting.name} is rougher than half the new diameter: no such bar can be.`,
    );
  }
  return withShape(state, { ...shape, diameter }, { size: owner }, 'change.diameter');
}

function shapedLike(state: FittingState, model: FittingState | undefined, modelId: string): Applied {
  if (modelId === state.fitting.id)
    return contradiction('change.fittingId', 'A fitting cannot take its own shape.');
  if (model === undefined)
    return contradiction(
      'change.fittingId',
      'The fitting whose shape is to be taken is left out of the sums.',
    );
  const { size, coefficient } = model.owners;
  return withShape(state, model.fitting.shape, { size, coefficient }, 'change.fittingId');
}

function withShape(
  state: FittingState,
  shape: ProjectShape,
  brought: Partial<PartOwners>,
  field: string,
): Applied {
  const { fitting } = state;
  if (isMember(shape) && lengthOf(fitting.placement) === 0) {
    return contradiction(field, `${fitting.name} stands at a point; a bar needs a length.`);
  }
  return applied({ ...state, fitting: { ...fitting, shape }, owners: { ...state.owners, ...brought } });
}

function sheltered(
  state: FittingState,
  change: Extract<RefitItem['change'], { kind: 'sheltered' }>,
  owner: string,
  states: FittingStates,
): Applied {
  const shelterId = change.shelteredByFittingId;
  const shelter = shelterId === null ? null : states.get(shelterId);
  if (shelterId === state.fitting.id)
    return contradiction('change.shelteredByFittingId', 'A fitting cannot shelter itself.');
  if (shelter === undefined || (shelter !== null && shelter.gone !== null)) {
    return contradiction('change.shelteredByFittingId', 'What is to give the shelter is not there by then.');
  }
  return applied({
    ...state,
    fitting: {
      ...state.fitting,
      exposure: change.exposure,
      exposureLeeward: change.exposureLeeward,
      shelteredByFittingId: shelterId,
    },
    owners: { ...state.owners, exposure: owner },
  });
}

/** A move brings a new place; the length stays the fitting's own, with its doubt, where the item leaves it as it was. */
function moved(state: FittingState, placement: ProjectFitting['placement'], owner: string): Applied {
  const { fitting, owners } = state;
  const before = fitting.placement;
  const keepsLength =
    Math.abs(lengthOf(placement) - lengthOf(before)) < 1e-9 && placement.basis === before.basis;
  return applied({
    ...state,
    fitting: { ...fitting, placement },
    owners: { ...owners, placement: owner, length: keepsLength ? owners.length : owner },
  });
}

/** Length of a placement's members; of a row, of the shorter of its first and last. */
function lengthOf(placement: ProjectFitting['placement']): number {
  if (placement.kind === 'taped') return placement.lengthM;
  const { start, end, row } = placement;
  const first = distance(start, end);
  return row === null ? first : Math.min(first, distance(row.lastStart, row.lastEnd));
}

function distance(a: ProjectPoint, b: ProjectPoint): number {
  return Math.hypot(b.xM - a.xM, b.yM - a.yM, b.zM - a.zM);
}
