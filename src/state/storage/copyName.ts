import { saveProject } from '../../project/file/saveProject';
import type { Project } from '../../project/file/schema';

/** The longest name that the project file allows. */
const nameLength = 200;

/** The project under a name that says what it is a copy of, and its text. Null when the project does not save. */
export function renamedCopy(
  project: Project,
  addition: string,
): { readonly project: Project; readonly text: string } | null {
  const copy = { ...project, name: copyName(project.name, addition) };
  const saved = saveProject(copy);
  return saved.ok ? { project: copy, text: saved.text } : null;
}

function copyName(name: string, addition: string): string {
  const end = ` (${addition})`;
  let start = '';
  for (const character of name) {
    if (start.length + character.length + end.length > nameLength) break;
    start += character;
  }
  return start + end;
}
