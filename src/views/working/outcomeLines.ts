import type { SailingState } from '../../physics/condition/sailingState';
import { outcomeKeys, outcomeQuantities, type Outcome, type OutcomeKey } from '../../physics/fitting/outcome';
import type { SiUnit } from '../../physics/quantity';
import { conditionSymbols, dutyQuantities, type DutyKey } from '../../physics/fitting/workingQuantities';
import { decimalsIn } from '../../units/printIn';
import type { KnownSymbols, SymbolValue } from './formula';
import type { LineGroup } from './memberLines';
import { present, workingLine, type WorkingLine } from './workingLine';
import type { WorkingSide } from './workingSides';

type Place = 'power' | 'price' | 'forceTrack' | 'forceBoat' | 'moment' | 'heel' | 'elsewhere';

/** Every number of the outcome has a place here, or this does not compile. */
const places = {
  dragAgainstTrackN: 'elsewhere',
  sideForceN: 'heel',
  verticalForceN: 'elsewhere',
  heelingMomentNm: 'heel',
  airPowerW: 'power',
  trackPowerW: 'power',
  windPowerW: 'power',
  fullPriceW: 'price',
  forceTrackXN: 'forceTrack',
  forceTrackYN: 'forceTrack',
  forceTrackZN: 'forceTrack',
  forceBoatXN: 'forceBoat',
  forceBoatYN: 'forceBoat',
  forceBoatZN: 'forceBoat',
  momentTrackXNm: 'moment',
  momentTrackYNm: 'moment',
  momentTrackZNm: 'moment',
  momentBoatXNm: 'moment',
  momentBoatYNm: 'moment',
  momentBoatZNm: 'moment',
} as const satisfies Record<OutcomeKey, Place>;

/** Power and what buys it, in the order in which the chain arrives there. */
export function powerGroups(sides: readonly WorkingSide[], state: SailingState): LineGroup[] {
  const isPriced =
    state.condition.hullDragPerSideForce !== null || state.condition.driveLostPerHeelingMomentPerM !== null;
  const lines = (shown: readonly Place[]): WorkingLine[] => outcomeLines(sides, state, shown);
  return [
    { title: 'time in use', lines: dutyLines(sides) },
    { title: 'power, mean', lines: lines(['power']) },
    { title: 'side force and heel, mean', lines: lines(isPriced ? ['heel', 'price'] : ['heel']) },
  ].filter((group) => group.lines.length > 0);
}

/** Force and moment in both frames: for who wants to add them up elsewhere. */
export function frameGroups(sides: readonly WorkingSide[], state: SailingState): LineGroup[] {
  const lines = (shown: readonly Place[]): WorkingLine[] => outcomeLines(sides, state, shown);
  return [
    { title: 'force in T, the track’s frame', lines: lines(['forceTrack']) },
    { title: 'force in B, the boat’s frame', lines: lines(['forceBoat']) },
    { title: 'moment in T and B', lines: lines(['moment']) },
  ].filter((group) => group.lines.length > 0);
}

function outcomeLines(
  sides: readonly WorkingSide[],
  state: SailingState,
  shown: readonly Place[],
): WorkingLine[] {
  const decimals = decimalsByUnit(sides);
  const known = sides.map(({ trace }) => outcomeSymbols(trace?.mean ?? null, state, decimals));
  return present(
    outcomeKeys
      .filter((key) => (shown as readonly string[]).includes(places[key]))
      .map((key) => {
        const quantity = outcomeQuantities[key];
        const inputs = sides.map(({ trace }) => ({
          value: trace?.mean[key] ?? null,
          decimals: decimals[quantity.unit],
        }));
        return workingLine(key, quantity, inputs, known);
      }),
  );
}

type DecimalsByUnit = Readonly<Record<'N' | 'N m' | 'W', number>>;

/** One place for all numbers of a unit, so that the eye can subtract air power and track power. */
function decimalsByUnit(sides: readonly WorkingSide[]): DecimalsByUnit {
  const of = (unit: 'N' | 'N m' | 'W'): number => {
    const keys = outcomeKeys.filter((key) => outcomeQuantities[key].unit === unit);
    return decimalsIn(
      sides.flatMap(({ trace }) => (trace === null ? [] : keys.map((key) => trace.mean[key]))),
      unit,
    );
  };
  return { N: of('N'), 'N m': of('N m'), W: of('W') };
}

function outcomeSymbols(
  outcome: Outcome | null,
  state: SailingState,
  decimals: DecimalsByUnit,
): KnownSymbols {
  const known = new Map<string, SymbolValue>(Object.entries(conditionSymbols(state)));
  if (outcome === null) return known;
  for (const key of outcomeKeys) {
    const { symbol, unit } = outcomeQuantities[key];
    // Watts keep their column's place, so that the identity subtracts; the rest is read to three figures.
    known.set(symbol, { value: outcome[key], unit, ...(unit === 'W' ? { decimals: decimals.W } : {}) });
  }
  return known;
}

const dutyKeys = Object.keys(dutyQuantities) as readonly DutyKey[];

function dutyLines(sides: readonly WorkingSide[]): WorkingLine[] {
  const values = sides.map(dutyValues);
  const decimals = decimalsIn(
    values.flatMap((side) => (side === null ? [] : [side.deployedDragN, side.stowedDragN, side.meanDragN])),
    'N',
  );
  const known = values.map((side) => dutySymbols(side, decimals));
  return present(
    dutyKeys.map((key) => {
      const quantity = dutyQuantities[key];
      const inputs = values.map((side, i) => ({
        value: side?.[key] ?? null,
        note: key === 'stowedDragN' ? stowedNote(sides[i]) : null,
        ...placeOf(quantity.unit, decimals),
      }));
      return workingLine(key, quantity, inputs, known);
    }),
  );
}

function placeOf(unit: SiUnit, decimals: number): { readonly decimals?: number } {
  return unit === 'N' ? { decimals } : {};
}

function dutyValues({ trace }: WorkingSide): Readonly<Record<DutyKey, number>> | null {
  if (trace === null) return null;
  return {
    dutyFraction: trace.dutyFraction,
    deployedDragN: trace.deployed.dragAgainstTrackN,
    stowedDragN: trace.stowed.dragAgainstTrackN,
    meanDragN: trace.mean.dragAgainstTrackN,
  };
}

function dutySymbols(values: Readonly<Record<DutyKey, number>> | null, decimals: number): KnownSymbols {
  const known = new Map<string, SymbolValue>();
  if (values === null) return known;
  for (const key of dutyKeys) {
    const { symbol, unit } = dutyQuantities[key];
    known.set(symbol, { value: values[key], unit, ...placeOf(unit, decimals) });
  }
  return known;
}

function stowedNote(side: WorkingSide | undefined): string | null {
  const fitting = side?.fitting;
  if (fitting === undefined || fitting === null) return null;
  const { stowed } = fitting;
  if (stowed === null) return 'nothing left in the wind';
  return `its own drag area and place; ${stowed.source === '' ? 'no source given' : stowed.source}`;
}
