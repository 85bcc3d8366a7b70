import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calloutsOf, type Callout, type CalloutWish } from '../../../src/charts/windsEye/callouts';
import { overlaps } from '../../../src/charts/labelBox';
import { viewKinds } from '../../../src/charts/windsEye/viewOf';
import { catalogue, fittingFromCatalogue } from '../../../src/project/catalogue/catalogue';
import { newProject } from '../../../src/project/catalogue/newProject';
import { deckLineOf } from '../../../src/project/core/fittingToPhysics';
import { hullFaces } from '../../../src/project/picture/hull';
import { solidsOf } from '../../../src/project/picture/solids';
import { fittedScene, stateAt, viewAt } from './pictures';

const outline = fc.record({
  lengthM: fc.double({ min: 6, max: 30, noNaN: true }),
  beamShare: fc.double({ min: 0.2, max: 0.4, noNaN: true }),
  mastShare: fc.double({ min: 1, max: 1.6, noNaN: true }),
});

const looks = fc.record({
  kind: fc.constantFrom(...viewKinds),
  angleDeg: fc.integer({ min: 0, max: 180 }),
  heelDeg: fc.integer({ min: -20, max: 45 }),
  turnDeg: fc.integer({ min: -180, max: 180 }),
  tack: fc.constantFrom('port' as const, 'starboard' as const),
  widthPx: fc.constantFrom(300, 342, 352, 700),
});

const entries = fc.uniqueArray(fc.constantFrom(...catalogue.map(({ id }) => id)), {
  minLength: 1,
  maxLength: 60,
});

function isIn({ box }: Callout, widthPx: number, heightPx: number): boolean {
  return box.left >= 0 && box.right <= widthPx && box.top >= 0 && box.bottom <= heightPx;
}

describe('callouts', () => {
  it('never overlap and never leave the frame, on 200 generated projects', () => {
    let most = 0;
    fc.assert(
      fc.property(outline, entries, looks, ({ lengthM, beamShare, mastShare }, ids, look) => {
        const project = newProject({
          name: 'Generated',
          lengthM,
          beamM: beamShare * lengthM,
          draughtM: 0.2 * lengthM,
          mastTopM: mastShare * lengthM,
        });
        const state = stateAt(look);
        const fittings = ids.map((id, i) => {
          const zone = catalogue.find((entry) => entry.id === id)?.zone ?? 'bow';
          return { ...fittingFromCatalogue(id, project.boat, zone, `f${i}`), id: `f${i}` };
        });
        const line = deckLineOf(project.boat);
        const solids = [
          ...hullFaces(project.boat, null),
          ...fittings.flatMap((fitting) => solidsOf(fitting, line, state)),
        ];
        const { items, frame } = fittedScene(
          solids,
          viewAt(look, look.kind, look.turnDeg),
          state,
          look.widthPx,
        );
        const wishes = fittings.map(({ id, name }, i): CalloutWish => ({
          fittingId: id,
          number: i + 1,
          name,
          value: `${1000 - i} W`,
        }));
        const callouts = calloutsOf(wishes, items, frame);
        most = Math.max(most, callouts.length);
        expect(callouts.length).toBeLessThanOrEqual(9);
        callouts.forEach((callout, i) => {
          expect(isIn(callout, frame.widthPx, frame.heightPx)).toBe(true);
          for (const other of callouts.slice(i + 1)) expect(overlaps(callout.box, other.box)).toBe(false);
        });
        // The largest always has one, if anything of it is above the water.
        const first = items.some(({ fittingId }) => fittingId === wishes[0]?.fittingId);
        expect(callouts.some(({ fittingId }) => fittingId === wishes[0]?.fittingId)).toBe(first);
      }),
      { numRuns: 200 },
    );
    expect(most).toBe(9);
  });
});
