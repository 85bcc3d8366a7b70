import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deckLine, freeboardAt, halfBeamAt } from '../../src/physics/placement/deckLine';
import {
  placeRow,
  placeTaped,
  placeTapedRow,
  withMirrorImages,
  type TapedPlace,
} from '../../src/physics/placement/placeMembers';
import { boatVector } from '../../src/physics/vector/vector3';
import { between, degree } from './arbitraries';

/** Straight, so that heights and beams between its stations are known. */
const line = deckLine(14, [
  { aftOfStemM: 0, freeboardM: 1.5, halfBeamM: 0.5 },
  { aftOfStemM: 5, freeboardM: 1.35, halfBeamM: 1.25 },
  { aftOfStemM: 14, freeboardM: 1.08, halfBeamM: 2.6 },
]);
const point = fc
  .tuple(between(-8, 8), between(-3, 3), between(0, 15))
  .map(([x, y, z]) => boatVector(x, y, z));
const member = fc.record({ start: point, end: point });

const place: fc.Arbitrary<TapedPlace> = fc.record({
  aftOfStemM: between(0, 14),
  side: fc.constantFrom('centreline' as const, 'port' as const, 'starboard' as const),
  athwartFrom: fc.constantFrom('centreline' as const, 'deck-edge' as const),
  athwartM: between(-0.5, 0.5),
  aboveDeckM: between(-0.2, 1),
  lengthM: between(0.1, 5),
  leanAftRad: between(-80 * degree, 80 * degree),
  leanOutRad: between(-80 * degree, 80 * degree),
});

describe('a taped member', () => {
  it('stands on the deck line, so far aft of the stem and so far out', () => {
    fc.assert(
      fc.property(place, (taped) => {
        const [x, y, z] = placeTaped(line, taped).start;
        const side = taped.side === 'starboard' ? -1 : 1;
        const halfBeam = 0.5 + 0.15 * taped.aftOfStemM;
        const out = taped.athwartFrom === 'centreline' ? taped.athwartM : halfBeam - taped.athwartM;
        expect(x).toBeCloseTo(7 - taped.aftOfStemM, 9);
        expect(y).toBeCloseTo(side * out, 9);
        expect(z).toBeCloseTo(1.5 - 0.03 * taped.aftOfStemM + taped.aboveDeckM, 9);
        expect(freeboardAt(line, taped.aftOfStemM)).toBeCloseTo(1.5 - 0.03 * taped.aftOfStemM, 9);
        expect(halfBeamAt(line, taped.aftOfStemM)).toBeCloseTo(halfBeam, 9);
      }),
    );
  });

  it('leans aft by one angle and out by the other, and keeps its length', () => {
    fc.assert(
      fc.property(place, (taped) => {
        const { start, end } = placeTaped(line, taped);
        const [dx, dy, dz] = [end[0] - start[0], end[1] - start[1], end[2] - start[2]];
        const side = taped.side === 'starboard' ? -1 : 1;
        expect(Math.hypot(dx, dy, dz)).toBeCloseTo(taped.lengthM, 9);
        expect(Math.asin(-dx / taped.lengthM)).toBeCloseTo(taped.leanAftRad, 6);
        expect(Math.atan2(side * dy, dz)).toBeCloseTo(taped.leanOutRad, 9);
      }),
    );
  });
});

describe('a row', () => {
  it('goes from its first to its last in equal steps, both included', () => {
    fc.assert(
      fc.property(member, member, fc.integer({ min: 2, max: 9 }), (first, last, count) => {
        const row = placeRow(first, last, count);
        expect(row).toHaveLength(count);
        row.forEach(({ start, end }, i) => {
          for (const axis of [0, 1, 2] as const) {
            const share = i / (count - 1);
            expect(start[axis]).toBeCloseTo(first.start[axis] * (1 - share) + last.start[axis] * share, 9);
            expect(end[axis]).toBeCloseTo(first.end[axis] * (1 - share) + last.end[axis] * share, 9);
          }
        });
      }),
    );
  });

  it('that is taped stands on the deck line one by one', () => {
    fc.assert(
      fc.property(place, between(0, 14), between(-0.5, 0.5), (first, aftOfStemM, athwartM) => {
        const row = placeTapedRow(line, first, { aftOfStemM, athwartM }, 3);
        const middle = {
          ...first,
          aftOfStemM: (first.aftOfStemM + aftOfStemM) / 2,
          athwartM: (first.athwartM + athwartM) / 2,
        };
        const expected = [first, middle, { ...first, aftOfStemM, athwartM }].map((one) =>
          placeTaped(line, one),
        );
        expect(row).toHaveLength(3);
        row.forEach(({ start }, i) => {
          for (const axis of [0, 1, 2] as const)
            expect(start[axis]).toBeCloseTo(expected[i]?.start[axis] ?? NaN, 9);
        });
      }),
    );
  });
});

describe('a pair', () => {
  it('has beside each member its image across the centreplane, and says which is the image', () => {
    fc.assert(
      fc.property(fc.array(member, { minLength: 1, maxLength: 4 }), (members) => {
        const all = withMirrorImages(members);
        expect(all.slice(0, members.length)).toEqual(members);
        members.forEach(({ start, end }, i) => {
          const image = all[members.length + i];
          expect(image?.isMirrored).toBe(true);
          expect(image?.start).toEqual([start[0], -start[1], start[2]]);
          expect(image?.end).toEqual([end[0], -end[1], end[2]]);
        });
      }),
    );
  });
});
