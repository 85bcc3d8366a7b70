import { describe, expect, it } from 'vitest';
import {
  boatSpeedFromPointer,
  keyStep,
  snappedAngleRad,
  snappedSpeedMs,
  steppedBoatSpeedMs,
  steppedWind,
  windFromPointer,
} from '../../../src/charts/windTriangleDrag';
import { windTriangleGeometry } from '../../../src/charts/windTriangleGeometry';
import { fromSi, toSi } from '../../../src/units/convert';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import { solved } from '../charts/builders';

const frame = { boat: { x: 80, y: 100 }, pxPerMs: 5 };

describe('the hand on the wind', () => {
  it('reads speed and angle off the page', () => {
    expect(windFromPointer({ x: 80, y: 50 }, frame, 'starboard')).toEqual({ speedMs: 10, angleRad: 0 });
    expect(windFromPointer({ x: 130, y: 100 }, frame, 'starboard')).toEqual({
      speedMs: 10,
      angleRad: Math.PI / 2,
    });
    expect(windFromPointer({ x: 30, y: 100 }, frame, 'port')).toEqual({ speedMs: 10, angleRad: Math.PI / 2 });
    expect(windFromPointer({ x: 95, y: 80 }, frame, 'starboard')).toEqual({
      speedMs: 5,
      angleRad: Math.atan2(3, 4),
    });
  });

  it('slides along the course where it leaves the side of the tack', () => {
    expect(windFromPointer({ x: 40, y: 50 }, frame, 'starboard')).toEqual({ speedMs: 10, angleRad: 0 });
    expect(windFromPointer({ x: 90, y: 150 }, frame, 'port')).toEqual({ speedMs: 10, angleRad: Math.PI });
    expect(windFromPointer(frame.boat, frame, 'port')).toEqual({ speedMs: 0, angleRad: 0 });
  });

  const points = [
    { windKn: 20, angleDeg: 44, boatKn: 7.3 },
    { windKn: 25, angleDeg: 155, boatKn: 12 },
    { windKn: 14, angleDeg: 120, boatKn: 34 },
    { windKn: 12, angleDeg: 180, boatKn: 6 },
  ];
  it.each(points.flatMap((point) => (['starboard', 'port'] as const).map((tack) => ({ ...point, tack }))))(
    'undoes the drawing: $windKn kn at $angleDeg°, boat $boatKn kn, $tack',
    (point) => {
      const triangle = windTriangleGeometry(solved(point).summary);
      const wind = windFromPointer(triangle.trueFrom, triangle, point.tack);
      expect(fromSi(wind.speedMs, 'kn')).toBeCloseTo(point.windKn, 9);
      expect(fromSi(wind.angleRad, 'deg')).toBeCloseTo(point.angleDeg, 6);
      expect(fromSi(boatSpeedFromPointer(triangle.apparentFrom, triangle), 'kn')).toBeCloseTo(
        point.boatKn,
        9,
      );
    },
  );
});

describe('the hand on the boat speed', () => {
  it('reads how far ahead of the wind it is, and never astern', () => {
    const held = { trueFrom: { x: 100, y: 80 }, pxPerMs: 5 };
    expect(boatSpeedFromPointer({ x: 0, y: 50 }, held)).toBe(6);
    expect(boatSpeedFromPointer({ x: 100, y: 90 }, held)).toBe(0);
  });
});

describe('steps', () => {
  it('are tenths of a knot and half degrees for a hand', () => {
    expect(snappedSpeedMs(toSi(21.96, 'kn'), 60)).toBe(toSi(22, 'kn'));
    expect(snappedSpeedMs(-1, 60)).toBe(0);
    expect(snappedSpeedMs(99, 60)).toBeCloseTo(60, 1);
    expect(snappedSpeedMs(99, 60)).toBeLessThanOrEqual(60);
    expect(snappedAngleRad(toSi(44.8, 'deg'))).toBe(toSi(45, 'deg'));
    expect(snappedAngleRad(toSi(190, 'deg'))).toBe(Math.PI);
  });

  it("are tenths and halves of the reader's unit of speed", () => {
    showIn({ ...usualUnits, speed: 'm/s' });
    try {
      expect(snappedSpeedMs(11.317, 60)).toBe(11.3);
      expect(steppedBoatSpeedMs(3, { speedSteps: 1, angleSteps: 0 })).toBe(3.5);
      expect(steppedWind({ speedMs: 10, angleRad: 1 }, { speedSteps: -2, angleSteps: 0 }).speedMs).toBe(9);
    } finally {
      showIn(usualUnits);
    }
  });

  it('are half knots and degrees for a key, ten times as far with Shift', () => {
    const wind = { speedMs: toSi(20, 'kn'), angleRad: toSi(40, 'deg') };
    const up = keyStep('ArrowUp', false);
    const right = keyStep('ArrowRight', true);
    if (up === null || right === null) throw new Error('no step');
    expect(fromSi(steppedWind(wind, up).speedMs, 'kn')).toBeCloseTo(20.5, 9);
    expect(fromSi(steppedWind(wind, right).angleRad, 'deg')).toBeCloseTo(50, 9);
    expect(fromSi(steppedBoatSpeedMs(0, up), 'kn')).toBeCloseTo(0.5, 9);
    expect(keyStep('Enter', false)).toBeNull();
  });
});
