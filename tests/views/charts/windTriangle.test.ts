import { describe, expect, it } from 'vitest';
import { labelBox, overlaps, type PlacedLabel } from '../../../src/charts/labelBox';
import { windTriangleGeometry, type WindTriangleGeometry } from '../../../src/charts/windTriangleGeometry';
import { apparentWindAt } from '../../../src/physics/condition/sailingState';
import { toSi } from '../../../src/units/convert';
import { solved } from './builders';

const points = [
  { windKn: 20, angleDeg: 44, boatKn: 7.3, leewayDeg: 4 },
  { windKn: 18, angleDeg: 95, boatKn: 17, leewayDeg: 1 },
  { windKn: 25, angleDeg: 155, boatKn: 12 },
  { windKn: 12, angleDeg: 180, boatKn: 6 },
  { windKn: 30, angleDeg: 0, boatKn: 5 },
  { windKn: 14, angleDeg: 120, boatKn: 34 },
];
const tacks = ['starboard', 'port'] as const;
const cases = points.flatMap((point) => tacks.map((tack) => ({ ...point, tack })));

describe.each(cases)('wind $windKn kn at $angleDeg°, boat $boatKn kn, $tack tack', (point) => {
  const condition = solved(point);
  const triangle = windTriangleGeometry(condition.summary);
  const { boat, trueFrom, apparentFrom, pxPerMs } = triangle;

  it('closes to scale: true wind is apparent wind plus boat speed', () => {
    const boatMs = toSi(point.boatKn, 'kn');
    expect(apparentFrom.x - trueFrom.x).toBeCloseTo(0, 9);
    expect(trueFrom.y - apparentFrom.y).toBeCloseTo(pxPerMs * boatMs, 9);
    const trueMs = Math.hypot(trueFrom.x - boat.x, trueFrom.y - boat.y) / pxPerMs;
    expect(trueMs).toBeCloseTo(toSi(point.windKn, 'kn'), 9);
  });

  it('has the apparent wind that the core finds at 10 m', () => {
    const apparent = apparentWindAt(condition.states.best, 10);
    expect(triangle.apparentSpeedMs).toBeCloseTo(apparent.speedMs, 6);
    expect(triangle.apparentAngleRad).toBeCloseTo(apparent.angleFromCourseRad, 6);
    const drawnMs = Math.hypot(apparentFrom.x - boat.x, apparentFrom.y - boat.y) / pxPerMs;
    expect(drawnMs).toBeCloseTo(apparent.speedMs, 6);
  });

  it('brings the wind from the side of the tack', () => {
    const side = Math.sin(toSi(point.angleDeg, 'deg')) * (point.tack === 'starboard' ? 1 : -1);
    expect(trueFrom.x - boat.x).toBeCloseTo(pxPerMs * toSi(point.windKn, 'kn') * side, 6);
  });

  it('keeps labels inside the picture and apart', () => {
    const boxes = Object.values(triangle.labels).map(labelBox);
    for (const { left, right, top, bottom } of boxes) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(triangle.widthPx);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(bottom).toBeLessThanOrEqual(triangle.heightPx);
    }
    const [apparent, trueWind, boatSpeed] = boxes;
    if (apparent === undefined || trueWind === undefined || boatSpeed === undefined)
      throw new Error('labels');
    expect(overlaps(trueWind, boatSpeed)).toBe(false);
    expect(overlaps(apparent, trueWind)).toBe(false);
    expect(overlaps(apparent, boatSpeed)).toBe(false);
  });
});

it('is the mirror image on the other tack', () => {
  const mirror = (tack: 'starboard' | 'port'): WindTriangleGeometry =>
    windTriangleGeometry(solved({ windKn: 20, angleDeg: 60, boatKn: 8, leewayDeg: 3, tack }).summary);
  const [one, other] = [mirror('starboard'), mirror('port')];
  expect(other.pxPerMs).toBe(one.pxPerMs);
  expect(other.apparentFrom.x).toBeCloseTo(other.widthPx - one.apparentFrom.x, 9);
  expect(other.apparentFrom.y).toBeCloseTo(one.apparentFrom.y, 9);
});

it('draws nothing of length zero for a calm with the boat at rest', () => {
  const calm = windTriangleGeometry(solved({ windKn: 0, angleDeg: 0, boatKn: 0 }).summary);
  expect(calm.apparentSpeedMs).toBe(0);
  expect(calm.angleArc).toBe('');
});

it('keeps the labels in the picture while a hand drags an end out of a frame that is held', () => {
  const frame = windTriangleGeometry(solved({ windKn: 21.5, angleDeg: 46, boatKn: 9.1 }).summary);
  const roundingPx = 1e-9;
  for (const [windKn, angleDeg] of [
    [26, 79],
    [35.5, 90],
    [40, 20],
    [40, 170],
  ] as const) {
    const { summary } = solved({ windKn, angleDeg, boatKn: 9.1 });
    const { labels, trueFrom } = windTriangleGeometry(summary, undefined, frame);
    expect(trueFrom.x).toBeCloseTo(
      frame.boat.x + frame.pxPerMs * toSi(windKn, 'kn') * Math.sin(toSi(angleDeg, 'deg')),
      6,
    );
    for (const label of Object.values<PlacedLabel>({ ...labels })) {
      const { left, right, top, bottom } = labelBox(label);
      expect(left).toBeGreaterThan(-roundingPx);
      expect(right).toBeLessThan(frame.widthPx + roundingPx);
      expect(top).toBeGreaterThan(-roundingPx);
      expect(bottom).toBeLessThan(frame.heightPx + roundingPx);
    }
    expect(overlaps(labelBox(labels.boatSpeed), labelBox(labels.apparent))).toBe(false);
  }
});

it('says it in words', () => {
  const { description } = windTriangleGeometry(
    solved({ windKn: 20, angleDeg: 90, boatKn: 15, tack: 'port' }).summary,
  );
  expect(description).toBe(
    'Wind triangle at 10\u00a0m, port tack: true wind 20.0\u00a0kn from 90.0° off the course, boat speed 15.0\u00a0kn; together an apparent wind of 25.0\u00a0kn from 53.1° off the course.',
  );
});
