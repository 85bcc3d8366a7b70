import { deckErrors, windErrors } from './boatAndWindRules';
import { barErrors, memberErrors } from './placementRules';
import { idErrors, profileErrors, referenceErrors } from './referenceRules';
import type { Project } from './schema';
import { shapeErrors } from './shapeRules';
import { pathText, type FieldError, type PathStep } from './fieldErrors';

/** What a rule across fields forbids, each with the path of the field to change. Takes a project that fits the schema. */
export function domainErrors(project: Project): readonly FieldError[] {
  return [
    ...idErrors(project),
    ...referenceErrors(project),
    ...profileErrors(project),
    ...(isKnownInOrder(project) ? [] : rangeErrors(project, [])),
    ...deckErrors(project),
    ...windErrors(project),
    ...shapeErrors(project),
    ...barErrors(project),
    ...memberErrors(project),
  ];
}

/** Parts of projects in which all ranges are in order; no part ever changes. */
const knownInOrder = new WeakSet();

/** Whether all ranges of a project are in order. It is asked at every key press, of a project of which one part is new. */
function isKnownInOrder(project: Project): boolean {
  return Object.values(project).every((part: unknown) =>
    Array.isArray(part) ? part.every(isPartInOrder) : isPartInOrder(part),
  );
}

function isPartInOrder(part: unknown): boolean {
  if (typeof part !== 'object' || part === null || knownInOrder.has(part)) return true;
  const isInOrder = rangeErrors(part, []).length === 0;
  if (isInOrder) knownInOrder.add(part);
  return isInOrder;
}

/** Wherever best, low and high stand together, low <= best <= high. */
function rangeErrors(value: unknown, steps: readonly PathStep[]): FieldError[] {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) return value.flatMap((element, i) => rangeErrors(element, [...steps, i]));
  const inside = Object.entries(value).flatMap(([key, part]) => rangeErrors(part, [...steps, key]));
  const { best, low, high } = value as Partial<Record<'best' | 'low' | 'high', number>>;
  if (best === undefined || low === undefined || high === undefined) return inside;
  if (low > best) {
    const message = `must not be above best (${best}); it is ${low}`;
    inside.push({ path: pathText([...steps, 'low']), message });
  }
  if (high < best) {
    const message = `must not be below best (${best}); it is ${high}`;
    inside.push({ path: pathText([...steps, 'high']), message });
  }
  return inside;
}
