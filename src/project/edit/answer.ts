import type { Project } from '../file/schema';
import { quoted, type FieldError } from '../file/fieldErrors';

/** A project after an edit; the very same object when the edit changed nothing. */
export interface Edited {
  readonly project: Project;
  /** What the edit did besides what was asked, for the reader. */
  readonly message?: string;
  /** Ids that the edit gave, in the order of the new things. */
  readonly newIds?: readonly string[];
}

/** Why an edit was not done: the field to stand beside, as a path of the whole file, and the complaint. */
export interface Refused {
  readonly refused: FieldError;
}

/** Every edit answers with one of these and never changes the project it was given. */
export type EditAnswer = Edited | Refused;

/** What an edit may say beside the project. */
export type Said = Omit<Edited, 'project'>;

export function refusal(path: string, message: string): Refused {
  return { refused: { path, message } };
}

/** The answer to an edit of something that is not there, such as one that another tab has deleted. */
export function nothingSuch(what: string, id: string): Refused {
  return refusal('', `there is no ${what} with the id ${quoted(id)}`);
}

/** "1 item", "3 items". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
