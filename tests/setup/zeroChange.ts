import type { Change } from '../../src/physics/fitting/change';

/** A change of nothing, for tests to write their numbers into. */
export function zeroChange(): Change {
  return {
    dragAgainstTrackN: 0,
    sideForceN: 0,
    heelingMomentNm: 0,
    airPowerW: 0,
    trackPowerW: 0,
    fullPriceW: 0,
  };
}
