import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openProject } from '../../../src/project/file/openProject';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import { chartGroups } from '../../../src/views/working/chartSides';
import { sidesOf, stateOf } from '../../../src/views/working/workingSides';

function everyKind() {
  const result = openProject(readFileSync('tests/data/projects/every-kind.json', 'utf8'));
  if (!result.ok) throw new Error('the fixture does not open');
  // What is left out of the sums has a curve too.
  const fittings = result.project.fittings.map((fitting) => ({ ...fitting, excluded: null }));
  return { ...result.project, fittings };
}

it('the point of every shape with a curve lies on it, with its range', () => {
  const project = everyKind();
  const condition = project.conditions.find(({ wind }) => wind.speedMs > 0);
  const conditionId = condition?.id ?? '';
  const basis = { kind: 'condition', conditionId } as const;
  const answer = projectLedger(project, { basis, planId: null, againstPlanId: null });
  if (!answer.ok) throw new Error('no ledger');
  const seen = new Set<string>();
  const state = stateOf(project, conditionId);
  if (state === null) throw new Error('no state');
  for (const row of answer.ledger.rows) {
    const sides = sidesOf(project, row, conditionId, 'before');
    for (const { curve, point } of chartGroups(sides, project.methods.fairing, state).flat()) {
      const lead = sides[0]?.lead;
      const sample = curve.at(point.x);
      expect(sample.best, row.fitting.name).toBeCloseTo(point.coefficient, 9);
      seen.add(row.fitting.shape.kind);
      // Onto its face; the working's coefficient is the mean over its axes.
      if (row.fitting.shape.kind === 'net') continue;
      expect(sample.low, row.fitting.name).toBeCloseTo(lead?.coefficientLow ?? NaN, 9);
      expect(sample.high, row.fitting.name).toBeCloseTo(lead?.coefficientHigh ?? NaN, 9);
    }
  }
  expect([...seen].sort()).toEqual([
    'bluffBody',
    'ellipticalBar',
    'fairing',
    'net',
    'rectangularBar',
    'roundBar',
    'sphere',
    'wire',
  ]);
});
