import { describe, expect, it } from 'vitest';
import { projectLedger } from '../../src/project/ledger/projectLedger';
import type { Project, ProjectFitting } from '../../src/project/file/schema';
import { routeProject } from './routeScenarios';
import { secondRoute } from './secondRoute';
import type { RouteFitting, RouteOutcome } from './secondRouteInput';

type WindLaw = Project['methods']['windLaw'];

/** In a uniform wind both routes are exact; elsewhere the product's few Gauss points may miss by 1e-4 of the force. */
const laws: readonly (readonly [WindLaw, number])[] = [
  [{ kind: 'uniform' }, 1e-9],
  [{ kind: 'power', exponent: 0.12 }, 1e-4],
  [{ kind: 'log', charnock: 0.011 }, 1e-4],
];

const cases = laws.flatMap(([law, tolerance]) => {
  const project = routeProject(law);
  return project.conditions.flatMap((condition) =>
    project.fittings.map((fitting) => {
      const title = `${fitting.name}, ${condition.name}, ${law.kind} wind`;
      return [title, { project, condition, fitting, law, tolerance }] as const;
    }),
  );
});

function ledgerOf(project: Project, conditionId: string) {
  const answer = projectLedger(project, {
    basis: { kind: 'condition', conditionId },
    planId: null,
    againstPlanId: null,
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  return answer.ledger;
}

const armM = 20;
const speedMs = 20;

/** The second route knows the shapes of its own scenarios only. */
function routed(fitting: ProjectFitting): RouteFitting {
  const { shape } = fitting;
  const isKnown = shape.kind === 'roundBar' || shape.kind === 'bluffBody' || shape.kind === 'measuredArea';
  if (!isKnown) throw new Error(`the second route knows no ${shape.kind}`);
  return { ...fitting, shape };
}

function expectAgreement(actual: RouteOutcome, expected: RouteOutcome, tolerance: number): void {
  const force = Math.hypot(expected.forceTrackXN, expected.forceTrackYN, expected.forceTrackZN);
  expect(force).toBeGreaterThan(0);
  for (const key of Object.keys(expected) as (keyof RouteOutcome)[]) {
    const scale = key.includes('oment') ? force * armM : key.endsWith('W') ? force * speedMs : force;
    expect(
      Math.abs(actual[key] - expected[key]),
      `${key}: ${actual[key]} against ${expected[key]}`,
    ).toBeLessThanOrEqual(tolerance * scale);
  }
}

describe('the ledger by a second route that shares no code with it', () => {
  it.each(cases)('%s', (_title, { project, condition, fitting, law, tolerance }) => {
    const row = ledgerOf(project, condition.id).rows.find(({ fittingId }) => fittingId === fitting.id);
    if (row === undefined) throw new Error('no row');
    expectAgreement(
      row.before.outcome,
      secondRoute(routed(fitting), project.boat, condition, law),
      tolerance,
    );
  });

  it.each(laws)('adds up to the same total, %o', (law, tolerance) => {
    const project = routeProject(law);
    for (const condition of project.conditions) {
      const rows = project.fittings.map((fitting) =>
        secondRoute(routed(fitting), project.boat, condition, law),
      );
      const total = rows.reduce(
        (sum, row) =>
          Object.fromEntries(
            (Object.keys(row) as (keyof RouteOutcome)[]).map((key) => [key, sum[key] + row[key]]),
          ) as unknown as RouteOutcome,
      );
      expectAgreement(ledgerOf(project, condition.id).forces.before.outcome, total, tolerance);
    }
  });
});
