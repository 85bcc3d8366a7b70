import { type DoubtedKey } from '../../physics/fitting/change';
import { outcomeQuantities } from '../../physics/fitting/outcome';
import type { ExtraColumn } from '../../state/preferences';
import type { Shown } from '../../state/appStore';
import type { Unit } from '../../units/unitTable';
import type { LedgerPlaces } from './ledgerPlaces';

/** A column right of the name and the flags. Some extra columns bring two. */
export type ColumnId =
  | Exclude<ExtraColumn, 'doubt'>
  | 'coefficientSpread'
  | 'drag'
  | 'before'
  | 'after'
  | 'spread'
  | 'bar'
  | 'saving'
  | 'bought'
  | 'doubts';

/** A column that prints one entry of an outcome. */
export interface FigureColumn {
  readonly key: DoubtedKey;
  readonly unit: Unit;
  readonly place: keyof LedgerPlaces;
}

const trackPower = { key: 'trackPowerW', unit: 'W', place: 'trackW' } as const;

export const figureColumns = {
  drag: { key: 'dragAgainstTrackN', unit: 'N', place: 'dragN' },
  air: { key: 'airPowerW', unit: 'W', place: 'airW' },
  sideForce: { key: 'sideForceN', unit: 'N', place: 'sideN' },
  heelingMoment: { key: 'heelingMomentNm', unit: 'N m', place: 'momentNm' },
  before: trackPower,
  after: trackPower,
  price: { key: 'fullPriceW', unit: 'W', place: 'trackW' },
} as const satisfies Partial<Record<ColumnId, FigureColumn>>;

export type FigureId = keyof typeof figureColumns;

export function isFigure(id: ColumnId): id is FigureId {
  return Object.hasOwn(figureColumns, id);
}

export interface ColumnHead {
  readonly name: string;
  readonly explained: string;
  readonly unit?: Unit;
  /** False where the head names its state itself, or has none. */
  readonly hasState: boolean;
}

export const columnHeads: Readonly<Record<ColumnId, ColumnHead>> = {
  bar: { name: 'track power', explained: 'track power, bars', unit: 'W', hasState: false },
  coefficient: { name: 'coefficient', explained: 'drag coefficient', hasState: true },
  coefficientSpread: { name: 'spread', explained: 'spread of the drag coefficient', hasState: false },
  regime: { name: 'regime', explained: 'regime of the flow', hasState: true },
  reynolds: { name: 'Reynolds number', explained: 'Reynolds number over the members', hasState: true },
  drag: { name: 'drag', explained: outcomeQuantities.dragAgainstTrackN.label, unit: 'N', hasState: true },
  air: { name: 'air', explained: outcomeQuantities.airPowerW.label, unit: 'W', hasState: true },
  sideForce: {
    name: 'side force to leeward',
    explained: `${outcomeQuantities.sideForceN.label}, across the track`,
    unit: 'N',
    hasState: true,
  },
  heelingMoment: {
    name: 'heeling moment',
    explained: outcomeQuantities.heelingMomentNm.label,
    unit: 'N m',
    hasState: true,
  },
  before: { name: 'before', explained: 'track power before', unit: 'W', hasState: false },
  after: { name: 'after', explained: 'track power after', unit: 'W', hasState: false },
  spread: {
    name: 'spread',
    explained: '90 % range of the track power, wind and density apart',
    unit: 'W',
    hasState: true,
  },
  price: {
    name: 'full price',
    explained: 'full price: track power with what side force and heel cost',
    unit: 'W',
    hasState: true,
  },
  saving: { name: 'saving', explained: 'saving in track power', unit: 'W', hasState: false },
  savingSpread: { name: 'spread', explained: '90 % range of the saving', unit: 'W', hasState: false },
  bought: {
    name: 'side force bought',
    explained: 'side force to leeward that the plan adds',
    unit: 'N',
    hasState: false,
  },
  doubts: {
    name: 'doubts',
    explained: 'the largest sources of doubt in the track power, by name, wind and density apart',
    unit: 'W',
    hasState: true,
  },
};

/** Which state a column shows: with both in sight, spread and doubts are those of the state after, as in the bars. */
export function stateOf(id: ColumnId, shown: Shown): 'before' | 'after' {
  if (shown !== 'both') return shown;
  return id === 'spread' || id === 'doubts' ? 'after' : 'before';
}

/** False for a column of the other state: its place stays empty, so that nothing moves. */
export function isInSight(id: ColumnId, shown: Shown): boolean {
  if (shown === 'both') return true;
  if (id === 'before' || id === 'after') return id === shown;
  return id !== 'saving' && id !== 'savingSpread' && id !== 'bought';
}

export interface ColumnQuestion {
  readonly extras: readonly ExtraColumn[];
  readonly hasFullPrice: boolean;
  /** True when a saving costs side force, so that it must be said beside it. */
  readonly hasBought: boolean;
  /** True where not all columns stand side by side, as on a phone. */
  readonly isNarrow: boolean;
  readonly shown: Shown;
}

/** The columns that are shown, from left to right. A narrow page has first what decides; the others follow to the side. */
export function shownColumns(question: ColumnQuestion): ColumnId[] {
  const { isNarrow, shown } = question;
  const optional = (ids: readonly ColumnId[]): ColumnId[] => ids.filter((id) => isWanted(id, question));
  if (!isNarrow) return optional(deskOrder);
  const powers: ColumnId[] = shown === 'both' ? ['after', 'bar', 'saving', 'before'] : [shown, 'bar'];
  return [...powers, ...optional(narrowRest)];
}

const deskOrder: readonly ColumnId[] = [
  'coefficient',
  'coefficientSpread',
  'regime',
  'reynolds',
  'drag',
  'air',
  'sideForce',
  'heelingMoment',
  'before',
  'after',
  'spread',
  'price',
  'bar',
  'saving',
  'savingSpread',
  'bought',
  'doubts',
];

const narrowFirst: readonly ColumnId[] = ['before', 'after', 'bar', 'saving', 'spread', 'drag'];
const narrowRest: readonly ColumnId[] = [
  'spread',
  'drag',
  ...deskOrder.filter((id) => !narrowFirst.includes(id)),
];

function isWanted(id: ColumnId, { extras, hasFullPrice, hasBought }: ColumnQuestion): boolean {
  switch (id) {
    case 'coefficientSpread':
      return extras.includes('coefficient');
    case 'doubts':
      return extras.includes('doubt');
    case 'price':
      return hasFullPrice && extras.includes('price');
    case 'bought':
      return hasBought && (extras.includes('sideForce') || (hasFullPrice && extras.includes('price')));
    case 'drag':
    case 'before':
    case 'after':
    case 'spread':
    case 'bar':
    case 'saving':
      return true;
    default:
      return extras.includes(id);
  }
}
