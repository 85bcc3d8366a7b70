interface Named {
  readonly id: string;
  readonly name: string;
}

export type Choice<Item> =
  { readonly ok: true; readonly item: Item } | { readonly ok: false; readonly message: string };

/**
 * The one item that a typed name means: an id exactly, then a name exactly, then either without regard to capitals.
 * @param what how such an item is called in the answer: "condition", "plan".
 */
export function chooseByName<Item extends Named>(
  items: readonly Item[],
  typed: string,
  what: string,
): Choice<Item> {
  const lower = typed.toLowerCase();
  const steps: readonly ((item: Item) => boolean)[] = [
    ({ id }) => id === typed,
    ({ name }) => name === typed,
    ({ id, name }) => id.toLowerCase() === lower || name.toLowerCase() === lower,
  ];
  for (const step of steps) {
    const found = items.filter(step);
    const [only, second] = found;
    if (only !== undefined && second === undefined) return { ok: true, item: only };
    if (only !== undefined) {
      const ids = found.map(({ id }) => id).join(', ');
      return { ok: false, message: `several are called "${typed}"; give an id: ${ids}` };
    }
  }
  return { ok: false, message: `there is no ${what} "${typed}"; ${namesOf(items, what)}` };
}

function namesOf(items: readonly Named[], what: string): string {
  if (items.length === 0) return `the project has no ${what}`;
  return `known: ${items.map(({ id, name }) => (id === name ? id : `${id} (${name})`)).join(', ')}`;
}
