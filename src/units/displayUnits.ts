import type { Unit } from './unitTable';

/**
 * The units in which a reader wants results and fields: one for each kind of quantity that people read in several.
 * `size` is a diameter or a thickness, `length` everything longer. The project file and the working stay in SI.
 */
export const displayChoices = {
  speed: ['kn', 'm/s', 'km/h'],
  length: ['m', 'ft'],
  size: ['mm', 'in'],
  force: ['N', 'kgf', 'lbf'],
  power: ['W', 'hp', 'PS'],
  moment: ['N m', 'kN m', 't.m'],
} as const satisfies Readonly<Record<string, readonly [Unit, ...Unit[]]>>;

export type DisplayKind = keyof typeof displayChoices;

export type DisplayUnits = { readonly [Kind in DisplayKind]: (typeof displayChoices)[Kind][number] };

/** What the page shows until the reader chooses: the first of each kind. */
export const usualUnits: DisplayUnits = {
  speed: 'kn',
  length: 'm',
  size: 'mm',
  force: 'N',
  power: 'W',
  moment: 'N m',
};
