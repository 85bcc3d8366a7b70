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

/** Points along the arc, and how many of the labels lie on one. */
function labelsOnArc({ boat, apparentFrom, angleArc, labels }: WindTriangleGeometry): number {
  const radiusPx = Number(/A([\d.]+)/.exec(angleArc)?.[1] ?? 0);
  const angle = Math.atan2(apparentFrom.x - boat.x, boat.y - apparentFrom.y);
  const onArc = Array.from({ length: 21 }, (_, i) => ({
    x: boat.x + radiusPx * Math.sin((angle * i) / 20),
    y: boat.y - radiusPx * Math.cos((angle * i) / 20),
  }));
  const isOn = (label: PlacedLabel): boolean => {
    const { left, right, top, bottom } = labelBox(label);
    return onArc.some(({ x, y }) => x > left && x < right && y > top && y < bottom);
  };
  return radiusPx === 0 ? 0 : Object.values<PlacedLabel>({ ...labels }).filter(isOn).length;
}

it.each(['held', 'fitting'])('keeps all labels apart and off the arc in a %s frame, however far', (kind) => {
  const held = windTriangleGeometry(solved({ windKn: 21.5, angleDeg: 46, boatKn: 9.1 }).summary);
  for (const windKn of [0.5, 8, 21.5, 36.6, 116])
    for (const angleDeg of [0, 15, 46, 79, 100, 142.5, 180])
      for (const boatKn of [0, 9.1, 90]) {
        const { summary } = solved({ windKn, angleDeg, boatKn });
        const triangle = windTriangleGeometry(summary, undefined, kind === 'held' ? held : null);
        const boxes = Object.values<PlacedLabel>({ ...triangle.labels }).map(labelBox);
        const pairs = boxes.flatMap((a, i) => boxes.slice(i + 1).filter((b) => overlaps(a, b)));
        const said = `${windKn} kn, ${angleDeg}°, boat ${boatKn} kn`;
        expect({ said, covered: pairs.length, onArc: labelsOnArc(triangle) }).toEqual({
          said,
          covered: 0,
          onArc: 0,
        });
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
