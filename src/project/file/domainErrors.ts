import { deckErrors, windErrors } from './boatAndWindRules';
import { barErrors, memberErrors } from './placementRules';
import { idErrors, profileErrors, referenceErrors } from './referenceRules';
import type { Project } from './schema';
import { shapeErrors } from './shapeRules';
import { pathText, type FieldError, type PathStep } from './wording';

/** What a rule across fields forbids, each with the path of the field to change. Takes a project that fits the schema. */
export function domainErrors(project: Project): readonly FieldError[] {
  return [
    ...idErrors(project),
    ...referenceErrors(project),
    ...profileErrors(project),
    // The whole project is asked at every key press, and hardly ever has one to say where.
    ...(hasRangesInOrder(project) ? [] : rangeErrors(project, [])),
    ...deckErrors(project),
    ...windErrors(project),
    ...shapeErrors(project),
    ...barErrors(project),
    ...memberErrors(project),
  ];
}

function hasRangesInOrder(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  const { best, low, high } = value as Partial<Record<'best' | 'low' | 'high', number>>;
  const isRange = best !== undefined && low !== undefined && high !== undefined;
  if (isRange && (low > best || high < best)) return false;
  for (const key in value) {
    if (!hasRangesInOrder((value as Readonly<Record<string, unknown>>)[key])) return false;
  }
  return true;
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
