import type * as z from 'zod/mini';
import { pathText, type FieldError } from './fieldErrors';

/** Most errors handed back; a file with more is the wrong file. */
const mostErrors = 100;

/** One error per field from what the schema found: an unknown key each, and the first complaint of every other place. */
export function schemaErrors(issues: readonly z.core.$ZodIssue[]): readonly FieldError[] {
  return onePerPath(issues.flatMap(errorsOfIssue));
}

function errorsOfIssue(issue: z.core.$ZodIssue): readonly FieldError[] {
  if (issue.code !== 'unrecognized_keys') return [{ path: pathText(issue.path), message: issue.message }];
  return issue.keys
    .slice(0, mostErrors + 1)
    .map((key) => ({ path: pathText([...issue.path, key]), message: issue.message }));
}

/** The first error of each path; past the limit one line says how many more there are. */
export function onePerPath(errors: readonly FieldError[]): readonly FieldError[] {
  const firstByPath = new Map<string, FieldError>();
  for (const error of errors) {
    if (!firstByPath.has(error.path)) firstByPath.set(error.path, error);
  }
  const all = [...firstByPath.values()];
  if (all.length <= mostErrors) return all;
  const more = all.length - mostErrors;
  return [...all.slice(0, mostErrors), { path: '', message: `${more} or more further errors are not shown` }];
}
