import { describe, expect, it } from 'vitest';
import { roomAboutPivotM } from '../../src/physics/strut/roomAboutPivot';

describe('the room about a pivot', () => {
  it('is half the thickness at the thickest place', () => {
    expect(roomAboutPivotM(0.4, 0.1, 0.12)).toBeGreaterThan(0.0499);
    expect(roomAboutPivotM(0.4, 0.1, 0.12)).toBeLessThan(0.05005);
  });

  it('shrinks to nothing at the nose and is never more than the distance to it', () => {
    expect(roomAboutPivotM(0.4, 0.1, 0)).toBe(0);
    for (const pivotM of [0.005, 0.02, 0.05])
      expect(roomAboutPivotM(0.4, 0.1, pivotM)).toBeLessThanOrEqual(pivotM);
  });

  it('scales with the section', () => {
    expect(roomAboutPivotM(0.8, 0.2, 0.16)).toBeCloseTo(2 * roomAboutPivotM(0.4, 0.1, 0.08), 12);
  });
});
