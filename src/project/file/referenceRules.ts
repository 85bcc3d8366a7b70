import type { Project, ProjectDuty, ProjectFitting, RefitItem } from './schema';
import { pathText, quoted, type FieldError, type PathStep } from './fieldErrors';

interface WithId {
  readonly id: string;
}

/** Ids are unique in their list; a plan's items among themselves. */
export function idErrors(project: Project): FieldError[] {
  return [
    ...doubles(project.zones, ['zones']),
    ...doubles(project.fittings, ['fittings']),
    ...doubles(project.conditions, ['conditions']),
    ...doubles(project.plans, ['plans']),
    ...project.plans.flatMap(({ items }, i) => doubles(items, ['plans', i, 'items'])),
    ...doubles(project.sources, ['sources']),
  ];
}

function doubles(entries: readonly WithId[], steps: readonly PathStep[]): FieldError[] {
  return repeated(
    entries.map(({ id }) => id),
    (i) => [...steps, i, 'id'],
  );
}

function repeated(ids: readonly string[], stepsOf: (index: number) => readonly PathStep[]): FieldError[] {
  const firstPlace = new Map<string, number>();
  return ids.flatMap((id, i) => {
    const first = firstPlace.get(id);
    if (first === undefined) {
      firstPlace.set(id, i);
      return [];
    }
    return [
      {
        path: pathText(stepsOf(i)),
        message: `${quoted(id)} is taken already, by ${pathText(stepsOf(first))}`,
      },
    ];
  });
}

interface KnownIds {
  readonly zones: ReadonlySet<string>;
  readonly fittings: ReadonlySet<string>;
  readonly conditions: ReadonlySet<string>;
}

/** Every id that names something names something that is there. */
export function referenceErrors(project: Project): FieldError[] {
  const known: KnownIds = {
    zones: idsOf(project.zones),
    fittings: idsOf(project.fittings),
    conditions: idsOf(project.conditions),
  };
  return [
    ...project.fittings.flatMap((fitting, i) => fittingReferences(fitting, ['fittings', i], known)),
    ...project.plans.flatMap(({ items }, i) =>
      items.flatMap((item, k) => itemReferences(item, ['plans', i, 'items', k], known)),
    ),
  ];
}

function idsOf(entries: readonly WithId[]): ReadonlySet<string> {
  return new Set(entries.map(({ id }) => id));
}

function fittingReferences(
  fitting: ProjectFitting,
  steps: readonly PathStep[],
  known: KnownIds,
): FieldError[] {
  return [
    ...unresolved(fitting.zoneId, known.zones, 'zone', [...steps, 'zoneId']),
    ...shelterErrors(fitting.shelteredByFittingId, fitting.id, known, [...steps, 'shelteredByFittingId']),
    ...dutyErrors(fitting.dutyFraction, [...steps, 'dutyFraction'], known),
  ];
}

function itemReferences(
  { fittingId, change }: RefitItem,
  steps: readonly PathStep[],
  known: KnownIds,
): FieldError[] {
  const changeSteps = [...steps, 'change'];
  const errors = unresolved(fittingId, known.fittings, 'fitting', [...steps, 'fittingId']);
  if (change.kind === 'shapeOf') {
    errors.push(...unresolved(change.fittingId, known.fittings, 'fitting', [...changeSteps, 'fittingId']));
  }
  if (change.kind === 'retracted') {
    errors.push(...dutyErrors(change.dutyFraction, [...changeSteps, 'dutyFraction'], known));
  }
  if (change.kind === 'sheltered') {
    const shelterSteps = [...changeSteps, 'shelteredByFittingId'];
    errors.push(...shelterErrors(change.shelteredByFittingId, fittingId, known, shelterSteps));
  }
  return errors;
}

function shelterErrors(
  shelterId: string | null,
  ownId: string,
  known: KnownIds,
  steps: readonly PathStep[],
): FieldError[] {
  if (shelterId === null) return [];
  if (shelterId === ownId) return [{ path: pathText(steps), message: 'a fitting cannot shelter itself' }];
  return unresolved(shelterId, known.fittings, 'fitting', steps);
}

function dutyErrors({ byCondition }: ProjectDuty, steps: readonly PathStep[], known: KnownIds): FieldError[] {
  return conditionErrors(byCondition, [...steps, 'byCondition'], known.conditions);
}

/** Conditions named in a list: each there, none twice. */
function conditionErrors(
  entries: readonly { readonly conditionId: string }[],
  steps: readonly PathStep[],
  known: ReadonlySet<string>,
): FieldError[] {
  const stepsOf = (index: number): readonly PathStep[] => [...steps, index, 'conditionId'];
  return [
    ...entries.flatMap(({ conditionId }, i) => unresolved(conditionId, known, 'condition', stepsOf(i))),
    ...repeated(
      entries.map(({ conditionId }) => conditionId),
      stepsOf,
    ),
  ];
}

function unresolved(
  id: string,
  known: ReadonlySet<string>,
  what: string,
  steps: readonly PathStep[],
): FieldError[] {
  return known.has(id)
    ? []
    : [{ path: pathText(steps), message: `there is no ${what} with the id ${quoted(id)}` }];
}

/** A profile names conditions that are there and has hours to share out. */
export function profileErrors({ profile, conditions }: Project): FieldError[] {
  if (profile === null) return [];
  const hours = profile.entries.reduce((sum, entry) => sum + entry.hours, 0);
  return [
    ...conditionErrors(profile.entries, ['profile', 'entries'], idsOf(conditions)),
    ...(hours > 0 ? [] : [{ path: 'profile.entries', message: 'the hours must add up to more than 0' }]),
  ];
}
