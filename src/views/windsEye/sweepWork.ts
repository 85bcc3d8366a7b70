import type { SailingState } from '../../physics/condition/sailingState';
import type { DeckLine } from '../../physics/placement/deckLine';
import type { Project, ProjectFitting } from '../../project/file/schema';
import type { BasisPart, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { fittingSweep, sumOfSweeps, sweepAnglesRad } from '../../project/picture/dragAreaSweep';

/** A zone's drag area against the wind angle, m2; `id` null for all together. */
export interface ZoneSweep {
  readonly id: string | null;
  readonly name: string;
  readonly before: readonly number[];
  readonly after: readonly number[];
}

let known: {
  readonly from: readonly unknown[];
  readonly sweeps: WeakMap<ProjectFitting, readonly number[]>;
} = {
  from: [],
  sweeps: new WeakMap(),
};

/** The same boat, wind and methods leave the sweeps of untouched fittings as they are. */
function knownSweeps(from: readonly unknown[]): WeakMap<ProjectFitting, readonly number[]> {
  const isSame = known.from.length === from.length && known.from.every((part, i) => part === from[i]);
  if (!isSame) known = { from, sweeps: new WeakMap() };
  return known.sweeps;
}

const nothing: readonly number[] = sweepAnglesRad.map(() => 0);

/** Works the sweeps of all zones out, fitting by fitting: whoever drives it may stop after each. */
export function* sweepWork(
  project: Project,
  ledger: ProjectLedger,
  { summary }: BasisPart,
  state: SailingState,
  line: DeckLine,
): Generator<undefined, readonly ZoneSweep[]> {
  const { condition, deck } = summary;
  const sweeps = knownSweeps([line, state, project.methods]);
  const sweepOf = (fitting: ProjectFitting | null): readonly number[] => {
    if (fitting === null || deck.speedMs === 0) return nothing;
    const sweep =
      sweeps.get(fitting) ?? fittingSweep(fitting, line, state, project.methods, condition.id, deck.speedMs);
    sweeps.set(fitting, sweep);
    return sweep;
  };
  const rows: { zoneId: string; before: readonly number[]; after: readonly number[] }[] = [];
  for (const row of ledger.rows) {
    if (row.excludedReason !== null) continue;
    const { fittingBefore, fittingAfter, fitting } = row;
    rows.push({ zoneId: fitting.zoneId, before: sweepOf(fittingBefore), after: sweepOf(fittingAfter) });
    yield;
  }
  const sum = (id: string | null, name: string): ZoneSweep => {
    const own = id === null ? rows : rows.filter(({ zoneId }) => zoneId === id);
    return {
      id,
      name,
      before: sumOfSweeps(own.map(({ before }) => before)),
      after: sumOfSweeps(own.map(({ after }) => after)),
    };
  };
  const zones = project.zones
    .filter(({ id }) => rows.some(({ zoneId }) => zoneId === id))
    .map(({ id, name }) => sum(id, name));
  return [sum(null, 'all'), ...zones];
}
