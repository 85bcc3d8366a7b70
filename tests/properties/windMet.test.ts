import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { envelopeQuantities, trackPowerOfDragW } from '../../src/physics/envelope/envelopeArithmetic';
import { metFromTrue, metFromTrueAngle, metFromTrueSpeed } from '../../src/physics/envelope/windMet';
import { sources } from '../../src/physics/sources';
import { between } from './arbitraries';

const degree = Math.PI / 180;

describe('the wind that is met', () => {
  it('is wind plus boat ahead, their difference astern, and a right triangle abeam', () => {
    expect(metFromTrue(10, 0, 4)).toEqual({ speedMs: 14, angleRad: 0 });
    expect(metFromTrue(10, Math.PI, 4).speedMs).toBeCloseTo(6, 12);
    const abeam = metFromTrue(3, Math.PI / 2, 4);
    expect([abeam.speedMs, abeam.angleRad]).toEqual([5, expect.closeTo(Math.atan2(3, 4), 12)]);
  });

  it('comes back from its own angle with the true speed, and from its own speed with the true angle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 25, noNaN: true }),
        fc.double({ min: 10 * degree, max: 170 * degree, noNaN: true }),
        // Slower than the wind, so that one apparent wind has the angle, and abaft the beam one true wind the speed.
        between(0, 0.8),
        (trueMs, angle, share) => {
          const met = metFromTrue(trueMs, angle, share * trueMs);
          const bySpeed = metFromTrueSpeed(trueMs, met.angleRad, share * trueMs);
          expect(bySpeed?.speedMs).toBeCloseTo(met.speedMs, 9);
          const byAngle = metFromTrueAngle(met.speedMs, angle, share * trueMs);
          expect(byAngle?.speedMs).toBeCloseTo(met.speedMs, 9);
          expect(byAngle?.angleRad).toBeCloseTo(met.angleRad, 9);
        },
      ),
    );
  });

  it('is none where the three do not close', () => {
    expect(metFromTrueSpeed(5, 90 * degree, 10)).toBeNull();
    expect(metFromTrueSpeed(5, 170 * degree, 10)).toBeNull();
    expect(metFromTrueAngle(5, 90 * degree, 10)).toBeNull();
    expect(metFromTrueAngle(5, 0, 10)).toBeNull();
  });
});

describe('track power of a drag', () => {
  it('is F V ahead, none abeam and negative astern', () => {
    expect(trackPowerOfDragW(24, 0, 5)).toBe(120);
    expect(trackPowerOfDragW(24, Math.PI / 2, 5)).toBeCloseTo(0, 12);
    expect(trackPowerOfDragW(24, Math.PI, 5)).toBeCloseTo(-120, 12);
  });
});

describe('the lines of an envelope', () => {
  it('name sources that are in the bibliography', () => {
    for (const quantity of Object.values(envelopeQuantities)) {
      if ('source' in quantity) expect(sources).toHaveProperty(quantity.source);
    }
  });
});
