import type * as z from 'zod/mini';
import { domainErrors } from '../file/domainErrors';
import { projectSchema, type Project } from '../file/schema';
import { pathText, type FieldError } from '../file/fieldErrors';
import type { EditAnswer, Said } from './answer';
import { keepIdentity } from './keepIdentity';

const parts = projectSchema.shape;

type ListKey = 'zones' | 'fittings' | 'conditions' | 'plans' | 'sources';
type PartKey = Exclude<keyof Project, ListKey | 'format' | 'version'>;

/** The parts of a project that an edit sets; the others stay. */
export type Changes = Partial<Omit<Project, 'format' | 'version'>>;

type Judged =
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly error: FieldError };

/**
 * The project with the changes in it, or the first complaint. It asks what opening a file asks (`checkProject`), of the
 * parts that are new: the project as it was is known to be valid, so the schema runs on changed elements alone and the
 * rules across fields on the whole. Unchanged parts keep their identity, down to a number set to what it was.
 */
export function judged(before: Project, changes: Changes, said: Said = {}): EditAnswer {
  const after: Record<string, unknown> = { ...before };
  for (const [key, value] of Object.entries(changes)) {
    const answer = isListKey(key)
      ? judgedList(before[key], value as Project[typeof key], key)
      : judgedPart(parts[key as PartKey], before[key as PartKey], value, [key]);
    if (!answer.ok) return { refused: answer.error };
    after[key] = answer.value;
  }
  const project = after as unknown as Project;
  if (Object.keys(changes).every((key) => after[key] === before[key as keyof Project])) {
    return { project: before, ...said };
  }
  const [error] = domainErrors(project);
  return error === undefined ? { project, ...said } : { refused: error };
}

const listKeys: readonly string[] = [
  'zones',
  'fittings',
  'conditions',
  'plans',
  'sources',
] satisfies ListKey[];

function isListKey(key: string): key is ListKey {
  return listKeys.includes(key);
}

interface WithId {
  readonly id: string;
}

function judgedList(before: readonly WithId[], after: readonly WithId[], key: ListKey): Judged {
  const list = parts[key];
  const length = judgedPart(list.def.in, null, after, [key]);
  if (!length.ok) return length;
  const old = new Map(before.map((element) => [element.id, element]));
  const values: unknown[] = [];
  for (const [i, element] of after.entries()) {
    const same = old.get(element.id);
    const answer: Judged =
      same === element
        ? { ok: true, value: element }
        : judgedPart(list.def.out.def.element, same, element, [key, i]);
    if (!answer.ok) return answer;
    values.push(answer.value);
  }
  const isSame = values.length === before.length && values.every((value, i) => value === before[i]);
  return { ok: true, value: isSame ? before : values };
}

function judgedPart(
  schema: z.ZodMiniType,
  before: unknown,
  after: unknown,
  steps: readonly (string | number)[],
): Judged {
  if (after === before) return { ok: true, value: before };
  const result = schema.safeParse(after);
  if (result.success) return { ok: true, value: keepIdentity(before, result.data) };
  const [issue] = result.error.issues;
  const keys = issue?.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [];
  const path = pathText([...steps, ...(issue?.path ?? []), ...keys]);
  return { ok: false, error: { path, message: issue?.message ?? '' } };
}
