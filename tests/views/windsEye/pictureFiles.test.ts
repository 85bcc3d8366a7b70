import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calloutsOf } from '../../../src/charts/windsEye/callouts';
import { pictureSvg, type PictureSheet } from '../../../src/charts/windsEye/pictureSvg';
import { viewKinds, viewOf } from '../../../src/charts/windsEye/viewOf';
import { deckLineOf } from '../../../src/project/core/fittingToPhysics';
import { solveProjectCondition } from '../../../src/project/ledger/conditionSummary';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import { rigOutlines } from '../../../src/project/picture/hull';
import { meaningOf, pictureRows, solidsOfRows, wishesOf } from '../../../src/views/windsEye/pictureModel';
import { everyKind } from '../ledger/openProjects';
import { fittedScene } from './pictures';

function sheetOf(kind: (typeof viewKinds)[number]): PictureSheet {
  const project = everyKind();
  const [condition] = project.conditions;
  if (condition === undefined) throw new Error('no condition');
  const answer = projectLedger(project, {
    basis: { kind: 'condition', conditionId: condition.id },
    planId: project.plans[0]?.id ?? null,
    againstPlanId: null,
  });
  if (!answer.ok) throw new Error('no ledger');
  const { states } = solveProjectCondition(project, condition);
  const rows = pictureRows(answer.ledger, condition.id, 'after', 'trackPower');
  const solids = [
    ...rigOutlines(project.boat, states.best.tackSign, 0.2),
    ...solidsOfRows(project.boat, rows, deckLineOf(project.boat), states.best),
  ];
  const { items, frame } = fittedScene(solids, viewOf(kind, states.best, 2), states.best);
  return {
    items,
    callouts: calloutsOf(wishesOf(rows), items, frame),
    meaning: meaningOf(rows, 'trackPower'),
    frame,
    hasHeights: kind !== 'above',
    titleLines: ['Test hull', `Seen: ${kind}`],
    legendLines: ['track power'],
  };
}

describe('a picture as a file', () => {
  // Regression files made by this code: they show that a picture has changed, not that it is right.
  // PICTURES=renew writes them anew; look at them then.
  it.each(viewKinds)('is the one on record: %s', (kind) => {
    const path = `tests/data/pictures/${kind}.svg`;
    const svg = pictureSvg(sheetOf(kind));
    if (process.env['PICTURES'] === 'renew') writeFileSync(path, svg);
    expect(svg).toBe(readFileSync(path, 'utf8'));
  });

  it('takes names as text, whatever stands in them', () => {
    const sheet = sheetOf('wind');
    const hostile = '</title><script>alert(1)</script>&\u0000"';
    const svg = pictureSvg({
      ...sheet,
      titleLines: [hostile],
      callouts: sheet.callouts.map((callout) => ({ ...callout, shownName: hostile })),
      legendLines: [hostile],
    });
    expect(svg).not.toContain('<script');
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
    expect(parsed.querySelector('parsererror')).toBeNull();
    expect(parsed.querySelector('title')?.textContent).toBe('</title><script>alert(1)</script>&"');
  });
});
