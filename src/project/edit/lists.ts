interface WithId {
  readonly id: string;
}

/** The list with one element put through a change. */
export function withChanged<Element extends WithId>(
  list: readonly Element[],
  id: string,
  change: (element: Element) => Element,
): readonly Element[] {
  return list.map((element) => (element.id === id ? change(element) : element));
}

/** The list with new elements right after the one named, or at the end. */
export function withInserted<Element extends WithId>(
  list: readonly Element[],
  inserted: readonly Element[],
  afterId: string | null,
): readonly Element[] {
  const index = list.findIndex(({ id }) => id === afterId);
  return index === -1
    ? [...list, ...inserted]
    : [...list.slice(0, index + 1), ...inserted, ...list.slice(index + 1)];
}

/** The list with one element moved to stand before another, or at the end. */
export function withMoved<Element extends WithId>(
  list: readonly Element[],
  id: string,
  beforeId: string | null,
): readonly Element[] {
  if (id === beforeId) return list;
  const moved = list.filter((element) => element.id === id);
  const rest = list.filter((element) => element.id !== id);
  const index = rest.findIndex((element) => element.id === beforeId);
  return index === -1 ? [...rest, ...moved] : [...rest.slice(0, index), ...moved, ...rest.slice(index)];
}

export function without<Element extends WithId>(
  list: readonly Element[],
  ids: ReadonlySet<string>,
): readonly Element[] {
  return list.filter(({ id }) => !ids.has(id));
}

/** `count` ids that the list has not: a letter for the noun and the next numbers. */
export function freshIds(list: readonly WithId[], letter: string, count: number): readonly string[] {
  const taken = new Set(list.map(({ id }) => id));
  const fresh: string[] = [];
  for (let number = list.length + 1; fresh.length < count; number += 1) {
    const id = `${letter}${number}`;
    if (!taken.has(id)) fresh.push(id);
  }
  return fresh;
}

/** The next id of {@link freshIds}. */
export function freshId(list: readonly WithId[], letter: string): string {
  return freshIds(list, letter, 1).join('');
}

/** What an element stands before once it is a step further up (-1) or down (1): null at the end, undefined where it cannot. */
export function beforeAfterStep(
  list: readonly WithId[],
  id: string,
  step: -1 | 1,
): string | null | undefined {
  const index = list.findIndex((element) => element.id === id);
  if (index === -1 || list[index + step] === undefined) return undefined;
  return list[step === -1 ? index - 1 : index + 2]?.id ?? null;
}

/** The next element of the list, else the one before; null for the only one. */
export function neighbourId(list: readonly WithId[], id: string): string | null {
  const index = list.findIndex((element) => element.id === id);
  return (list[index + 1] ?? list[index - 1])?.id ?? null;
}
