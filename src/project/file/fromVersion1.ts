import type { Upgrader } from './upgraders';

type Content = Readonly<Record<string, unknown>>;

/**
 * Version 2 knows more shapes, a pull test beside a measured area, corner radii, and two more choices of method. What
 * version 1 took for granted is written down: sharp corners, the cross-flow principle, and a turbulent layer, which
 * matters to fairings only.
 */
export const fromVersion1: Upgrader = (older) => ({
  ...older,
  fittings: each(older['fittings'], withNewParts),
  plans: each(older['plans'], (plan) => ({ ...plan, items: each(plan['items'], itemWithNewParts) })),
  methods: { ...contentOf(older['methods']), inclined: 'cross-flow', fairing: 'turbulent' },
});

function withNewParts(fitting: Content): Content {
  return { ...fitting, shape: completed(contentOf(fitting['shape'])) };
}

function itemWithNewParts(item: Content): Content {
  const change = contentOf(item['change']);
  return change['kind'] === 'typed' ? { ...item, change: withNewParts(change) } : item;
}

function completed(shape: Content): Content {
  if (shape['kind'] === 'measuredArea') return { ...shape, pullTest: null };
  return shape['kind'] === 'bluffBody' ? { ...shape, cornerRadiusM: 0 } : shape;
}

/** What is no object or list stays as it is: the schema says what is wrong with it. */
function each(list: unknown, change: (entry: Content) => Content): unknown {
  if (!Array.isArray(list)) return list;
  return list.map((entry: unknown) => (isContent(entry) ? change(entry) : entry));
}

function contentOf(value: unknown): Content {
  return isContent(value) ? value : {};
}

function isContent(value: unknown): value is Content {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
