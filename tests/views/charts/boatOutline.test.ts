import { describe, expect, it } from 'vitest';
import { boatOutlineGeometry } from '../../../src/charts/boatOutlineGeometry';
import { blankBoat } from '../../../src/project/file/blankParts';

const most = { widthPx: 640, heightPx: 640 };

function pointsOf(path: string): (readonly [number, number])[] {
  return path
    .replace(/^M|Z$/g, '')
    .split('L')
    .map((point) => {
      const [x = NaN, y = NaN] = point.split(' ').map(Number);
      return [x, y] as const;
    });
}

describe("the boat's outline", () => {
  const chart = boatOutlineGeometry(blankBoat, most);
  const { profile, plan } = chart;
  const pxPerM = (profile.sternX - profile.stemX) / blankBoat.lengthM;
  /** Two ends, each drawn to a tenth of a pixel. */
  const drawn = 0.11;

  it('has one scale: length both ways, mast, freeboard and half-beam agree', () => {
    const metres = (px: number): number => px / pxPerM;
    expect(Math.abs(plan.sternY - plan.stemY - 12 * pxPerM)).toBeLessThan(drawn);
    expect(Math.abs(chart.waterY - chart.mast.topY - 18 * pxPerM)).toBeLessThan(drawn);
    expect(Math.abs(chart.mast.x - profile.stemX - 5 * pxPerM)).toBeLessThan(drawn);
    expect(Math.abs(plan.mastY - plan.stemY - 5 * pxPerM)).toBeLessThan(drawn);
    const [bow] = pointsOf(chart.profilePath);
    expect(Math.abs(metres(chart.waterY - (bow?.[1] ?? 0)) - 1.4)).toBeLessThan(drawn / pxPerM);
    const amidships = pointsOf(chart.planPath)[20];
    expect(Math.abs(metres(plan.centrelineX - (amidships?.[0] ?? 0)) - 1.9)).toBeLessThan(drawn / pxPerM);
  });

  it('is the same to port and to starboard', () => {
    const points = pointsOf(chart.planPath);
    const mirrored = [...points].reverse();
    for (const [i, [x, y]] of points.entries()) {
      const [otherX, otherY] = mirrored[i] ?? [NaN, NaN];
      expect(otherY).toBe(y);
      expect(Math.abs(x + otherX - 2 * plan.centrelineX)).toBeLessThan(2 * drawn);
    }
  });

  it('stays within the room, whatever the boat', () => {
    const boats = [
      blankBoat,
      { ...blankBoat, lengthM: 200, mast: { aftOfStemM: -50, topAboveWaterplaneM: 0 } },
      { ...blankBoat, lengthM: 1, mast: { aftOfStemM: 0.5, topAboveWaterplaneM: 150 } },
    ];
    for (const boat of boats) {
      const outline = boatOutlineGeometry(boat, most);
      expect(outline.widthPx).toBeLessThanOrEqual(650);
      expect(outline.heightPx).toBeLessThanOrEqual(640.1);
      expect(outline.mast.topY).toBeGreaterThanOrEqual(0);
      expect(outline.plan.stemY).toBeGreaterThanOrEqual(0);
      const ticks = [...outline.profile.ticks, ...outline.plan.ticks];
      expect(ticks.length).toBeLessThanOrEqual(26);
      expect(ticks.every(({ at }) => at >= 0 && at <= 640)).toBe(true);
    }
  });

  it('marks whole metres aft of the stem', () => {
    expect(profile.ticks.map(({ label }) => label.replace('\u00a0', ' '))).toEqual(
      Array.from({ length: 13 }, (_, i) => `${i} m`),
    );
    expect(plan.ticks[0]?.at).toBe(plan.stemY);
    expect(plan.ticks.at(-1)?.at).toBe(plan.sternY);
  });
});
