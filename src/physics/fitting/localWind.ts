import type { SailingState } from '../condition/sailingState';
import { logWindHeight, windSpeedAtLogMs } from '../wind/windProfile';
import type { FittingInput } from './fittingInput';

/** The air at one height: free (what the boat meets) and local (what the fitting meets), in the track's frame. */
export interface PointWind {
  trueX: number;
  trueY: number;
  freeX: number;
  freeY: number;
  localX: number;
  localY: number;
}

export function emptyWind(): PointWind {
  return { trueX: 0, trueY: 0, freeX: 0, freeY: 0, localX: 0, localY: 0 };
}

/** Exposure and local turn of one side of a fitting, resolved for the tack. */
export interface Setting {
  readonly exposure: number;
  readonly turnCosine: number;
  /** Sine with the tack's sign in it. */
  readonly turnSine: number;
}

/** The free apparent wind: neither sheltered nor turned. */
export const freeSetting: Setting = { exposure: 1, turnCosine: 1, turnSine: 0 };

/** The two settings of a fitting: for members on the windward side and the centreline, and on the leeward side. */
export interface SideSettings {
  readonly windward: Setting;
  readonly leeward: Setting;
}

export function sideSettings(fitting: FittingInput, tackSign: SailingState['tackSign']): SideSettings {
  const turnCosine = Math.cos(fitting.localTurnRad);
  const turnSine = tackSign * Math.sin(fitting.localTurnRad);
  return {
    windward: { exposure: fitting.exposure.best, turnCosine, turnSine },
    leeward: { exposure: fitting.exposureLeeward.best, turnCosine, turnSine },
  };
}

/** The setting at an athwartships place: the leeward side is port on starboard tack. */
export function settingAt(settings: SideSettings, middleY: number, state: SailingState): Setting {
  return state.tackSign * middleY > 1e-9 ? settings.leeward : settings.windward;
}

/**
 * Wind at a height. The local wind is the free apparent wind times the exposure, turned about the vertical: a positive
 * turn brings it from further aft.
 */
export function windAt(state: SailingState, setting: Setting, heightM: number, out: PointWind): PointWind {
  return windAtLog(state, setting, logWindHeight(heightM), out);
}

/** The same from the logarithm of the height, which members keep for each of their points. */
export function windAtLog(
  state: SailingState,
  setting: Setting,
  logHeight: number,
  out: PointWind,
): PointWind {
  const speed = windSpeedAtLogMs(state.profile, logHeight);
  out.trueX = speed * state.flowX;
  out.trueY = speed * state.flowY;
  out.freeX = out.trueX - state.boatSpeedMs;
  out.freeY = out.trueY;
  out.localX = setting.exposure * (out.freeX * setting.turnCosine + out.freeY * setting.turnSine);
  out.localY = setting.exposure * (out.freeY * setting.turnCosine - out.freeX * setting.turnSine);
  return out;
}
