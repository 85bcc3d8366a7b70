import { describe, expect, it } from 'vitest';
import { dragAlongWindN } from '../../../src/physics/ledger/alongWind';

describe('drag along the wind', () => {
  it('is the force against the track from ahead and the side force from abeam', () => {
    const force = { dragAgainstTrackN: 10, sideForceN: 4 };
    expect(dragAlongWindN(force, 0)).toBe(10);
    expect(dragAlongWindN(force, Math.PI / 2)).toBeCloseTo(4, 12);
    expect(dragAlongWindN(force, Math.PI)).toBeCloseTo(-10, 12);
  });

  it('is the whole force where that lies along the wind', () => {
    const angle = 0.6;
    const force = { dragAgainstTrackN: 7 * Math.cos(angle), sideForceN: 7 * Math.sin(angle) };
    expect(dragAlongWindN(force, angle)).toBeCloseTo(7, 12);
  });
});
