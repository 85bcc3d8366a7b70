/**
 * Speed of the ledger's kernel: fittings per second with the full trace (every doubt of every row), over the demo's
 * fittings in each of its conditions, on one core. A fitting is one row of the ledger; rows and pairs count once.
 * The accuracy that the speed is bought with is checked first. Run by `npm run bench`; exits 1 when either bar is missed.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { evaluateFitting } from '../../src/physics/fitting/evaluateFitting';
import type { FittingInput } from '../../src/physics/fitting/fittingInput';
import { layMembers, sumDeployed, type Methods } from '../../src/physics/fitting/sumFitting';
import type { ConditionStates } from '../../src/physics/condition/conditionStates';
import { asSailed } from '../../src/project/core/fittingState';
import { deckLineOf, fittingToPhysics } from '../../src/project/core/fittingToPhysics';
import { openProject } from '../../src/project/file/openProject';
import type { Project } from '../../src/project/file/schema';
import { solveProjectCondition } from '../../src/project/ledger/conditionSummary';
import { dutyIn } from '../../src/project/ledger/rowEvaluator';

/** What one row of the ledger is computed from. */
interface Work {
  readonly name: string;
  readonly fitting: FittingInput;
  readonly states: ConditionStates;
  readonly duty: number;
}

const leastFittingsPerSecond = 20_000;
const largestError = 1e-3;
const finePoints = 64;
const warmUpMs = 2000;
const rounds = 15;
const roundMs = 300;

const demoFolder = new URL('../../demo-data/', import.meta.url);

function demoProjects(): Project[] {
  const names = readdirSync(demoFolder).filter((name) => name.endsWith('.windtoll.json'));
  return names.map((name) => {
    const opened = openProject(readFileSync(new URL(name, demoFolder), 'utf8'));
    if (!opened.ok) throw new Error(`${name}: ${JSON.stringify(opened.errors)}`);
    return opened.project;
  });
}

function workOf(project: Project): Work[] {
  const line = deckLineOf(project.boat);
  const fittings = project.fittings.filter(({ excluded }) => excluded === null);
  return project.conditions.flatMap((condition) => {
    const { states } = solveProjectCondition(project, condition);
    return fittings.map((fitting) => ({
      name: `${fitting.name} in ${condition.name}`,
      fitting: fittingToPhysics(asSailed(fitting), line),
      states,
      duty: dutyIn(fitting.dutyFraction, condition.id),
    }));
  });
}

/** How far a row's force lies from the one with 64 Gauss points per stretch, as a share of its size. */
function errorOf({ fitting, states: { best } }: Work, methods: Methods): number {
  const force = (points: number | null): readonly [number, number, number] => {
    const { fx, fy, fz } = sumDeployed(fitting, layMembers(fitting, best, points), best, methods);
    return [fx, fy, fz];
  };
  const [coarse, fine] = [force(null), force(finePoints)];
  const size = Math.hypot(...fine);
  return size === 0 ? 0 : Math.hypot(coarse[0] - fine[0], coarse[1] - fine[1], coarse[2] - fine[2]) / size;
}

interface Timed {
  readonly work: readonly Work[];
  readonly methods: Methods;
}

/** Evaluates everything over and over for `forMs`; fittings per second. Keeps a sum so that nothing is optimised away. */
function fittingsPerSecond(
  batches: readonly Timed[],
  forMs: number,
): { readonly rate: number; readonly sum: number } {
  let count = 0;
  let sum = 0;
  const from = performance.now();
  let now = from;
  while (now - from < forMs) {
    for (const { work, methods } of batches) {
      for (const { fitting, states, duty } of work) {
        sum += evaluateFitting(fitting, states, methods, duty).mean.trackPowerW;
      }
      count += work.length;
    }
    now = performance.now();
  }
  return { rate: (1000 * count) / (now - from), sum };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

function main(): number {
  const batches = demoProjects().map((project): Timed => ({
    work: workOf(project),
    methods: { ends: project.methods.ends, inclined: 'cross-flow', fairing: 'turbulent' },
  }));
  const all = batches.flatMap(({ work }) => work);
  if (all.length === 0) throw new Error('the demo has no fittings');
  const errors = batches.flatMap(({ work, methods }) =>
    work.map((each) => ({ name: each.name, error: errorOf(each, methods) })),
  );
  const worst = errors.reduce((a, b) => (b.error > a.error ? b : a));
  console.log(`largest error against ${finePoints} points: ${worst.error.toExponential(1)} (${worst.name})`);
  if (worst.error > largestError) {
    console.error(`the bar is ${largestError}: speed below it counts for nothing`);
    return 1;
  }
  const members = all.reduce((sum, { fitting }) => sum + fitting.members.length, 0);
  const warm = fittingsPerSecond(batches, warmUpMs);
  if (!Number.isFinite(warm.sum)) throw new Error('the sum is no number');
  const rates = Array.from({ length: rounds }, () => fittingsPerSecond(batches, roundMs).rate);
  const rate = median(rates);
  const spread = `${Math.round(Math.min(...rates))} to ${Math.round(Math.max(...rates))}`;
  console.log(
    `${all.length} fittings with ${members} members, every doubt, ${rounds} rounds of ${roundMs} ms`,
  );
  console.log(`${Math.round(rate)} fittings/s on one core (rounds ${spread})`);
  console.log(`${Math.round((rate * members) / all.length)} members/s`);
  if (rate >= leastFittingsPerSecond) return 0;
  console.error(`the bar is ${leastFittingsPerSecond} fittings/s`);
  return 1;
}

process.exitCode = main();
