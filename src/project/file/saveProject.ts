import { refusal } from './guard';
import { checkProject } from './openProject';
import type { Project } from './schema';
import type { FieldError } from './fieldErrors';

export type SaveResult =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly errors: readonly FieldError[] };

/**
 * The text of a project file. It passes the checks of opening first, because JSON writes what it cannot hold as null:
 * an unchecked save could make a file that does not open. The keys stand in the schema's order, so equal projects give
 * equal bytes.
 */
export function saveProject(project: Project): SaveResult {
  const checked = checkProject(project);
  if (!checked.ok) return { ok: false, errors: checked.errors };
  const text = `${JSON.stringify(checked.value, null, 2)}\n`;
  const message = refusal(text);
  return message === null ? { ok: true, text } : { ok: false, errors: [{ path: '', message }] };
}
