import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openProject } from '../../../src/project/file/openProject';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import { chartGroups } from '../../../src/views/working/chartSides';
import { sidesOf } from '../../../src/views/working/workingSides';

function everyKind() {
  const result = openProject(readFileSync('tests/data/projects/every-kind.json', 'utf8'));
  if (!result.ok) throw new Error('the fixture does not open');
  return result.project;
}

it('the point of every shape with a curve lies on it, with its range', () => {
  const project = everyKind();
  const condition = project.conditions.find(({ wind }) => wind.speedMs > 0);
  const conditionId = condition?.id ?? '';
  const basis = { kind: 'condition', conditionId } as const;
  const answer = projectLedger(project, { basis, planId: null, againstPlanId: null });
  if (!answer.ok) throw new Error('no ledger');
  const seen = new Set<string>();
  for (const row of answer.ledger.rows) {
    const sides = sidesOf(project, row, conditionId, 'before');
    for (const { curve, point } of chartGroups(sides, project.methods.fairing).flat()) {
      const lead = sides[0]?.lead;
      const sample = curve.at(point.x);
      expect(sample.best, row.fitting.name).toBeCloseTo(point.coefficient, 9);
      expect(sample.low, row.fitting.name).toBeCloseTo(lead?.coefficientLow ?? NaN, 9);
      expect(sample.high, row.fitting.name).toBeCloseTo(lead?.coefficientHigh ?? NaN, 9);
      seen.add(row.fitting.shape.kind);
    }
  }
  expect([...seen].sort()).toEqual([
    'ellipticalBar',
    'fairing',
    'rectangularBar',
    'roundBar',
    'sphere',
    'wire',
  ]);
});
