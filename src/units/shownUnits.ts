import { usualUnits, type DisplayKind, type DisplayUnits } from './displayUnits';
import type { Unit } from './unitTable';

const kinds = Object.keys(usualUnits) as readonly DisplayKind[];

let isUsual = true;
let shownFor: ReadonlyMap<Unit, Unit> = new Map();

/**
 * Sets the units of everything that is printed for people from here on. What is on the screen already must be drawn
 * anew. Nothing else sets it: without a call, the terminal's case, the usual units are printed.
 */
export function showIn(units: DisplayUnits): void {
  isUsual = kinds.every((kind) => units[kind] === usualUnits[kind]);
  shownFor = new Map(kinds.map((kind) => [usualUnits[kind], units[kind]]));
}

/** The reader's unit for a quantity that is usually read in this one; a unit without a choice is its own. */
export function shownUnit(unit: Unit): Unit {
  return shownFor.get(unit) ?? unit;
}

/** True until the reader has chosen a unit other than the usual ones. */
export function areUnitsUsual(): boolean {
  return isUsual;
}
