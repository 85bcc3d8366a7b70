import { describe, expect, it } from 'vitest';
import { boatOutlineGeometry } from '../../../src/charts/boatOutlineGeometry';
import { blankBoat } from '../../../src/project/file/blankParts';

const most = { widthPx: 640, heightPx: 400 };

function pointsOf(path: string): number[][] {
  return path
    .replace(/^M|Z$/g, '')
    .split('L')
    .map((point) => point.split(' ').map(Number));
}

describe("the boat's outline", () => {
  const chart = boatOutlineGeometry(blankBoat, most);
  const pxPerM = (chart.sternX - chart.stemX) / blankBoat.lengthM;

  it('has one scale: length, mast and half-beam agree', () => {
    expect(chart.waterY - chart.mast.topY).toBeCloseTo(18 * pxPerM, 0);
    expect(chart.mast.x - chart.stemX).toBeCloseTo(5 * pxPerM, 0);
    const widest = Math.max(
      ...pointsOf(chart.planPath).map(([, y]) => Math.abs((y ?? 0) - chart.centrelineY)),
    );
    expect(widest / pxPerM).toBeCloseTo(1.9, 0);
    expect(chart.waterY - chart.mast.footY).toBeGreaterThan(1.1 * pxPerM);
  });

  it('is the same to port and to starboard', () => {
    const points = pointsOf(chart.planPath);
    const mirrored = [...points].reverse();
    for (const [i, [x, y]] of points.entries()) {
      const [mx, my] = mirrored[i] ?? [];
      expect(mx).toBe(x);
      expect((y ?? 0) - chart.centrelineY).toBeCloseTo(chart.centrelineY - (my ?? 0), 0);
    }
  });

  it('stays within the room, whatever the boat', () => {
    const boats = [
      blankBoat,
      { ...blankBoat, lengthM: 200, mast: { aftOfStemM: -50, topAboveWaterplaneM: 0 } },
      { ...blankBoat, lengthM: 1, mast: { aftOfStemM: 0.5, topAboveWaterplaneM: 150 } },
    ];
    for (const boat of boats) {
      const { widthPx, heightPx, mast, ticks, tickY } = boatOutlineGeometry(boat, most);
      expect(widthPx).toBeLessThanOrEqual(640.1);
      expect(heightPx).toBeLessThanOrEqual(400.1);
      expect(mast.topY).toBeGreaterThanOrEqual(0);
      expect(tickY).toBeLessThan(heightPx);
      expect(ticks.length).toBeLessThanOrEqual(13);
      expect(ticks.every(({ x }) => x >= 0 && x <= widthPx)).toBe(true);
    }
  });

  it('marks whole metres aft of the stem', () => {
    expect(chart.ticks.map(({ label }) => label.replace('\u00a0', ' '))).toEqual(
      Array.from({ length: 13 }, (_, i) => `${i} m`),
    );
  });
});
