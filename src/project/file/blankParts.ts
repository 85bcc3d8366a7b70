import type { EndMethod } from '../../physics/section/endEffect';
import { openSeaLogLaw } from '../../physics/wind/windProfile';
import {
  currentVersion,
  formatName,
  type Project,
  type ProjectAir,
  type ProjectBoat,
  type ProjectCondition,
  type ProjectDuty,
  type ProjectExposure,
  type ProjectFitting,
  type ProjectFlags,
  type ProjectMethods,
  type ProjectPlacement,
  type ProjectPlan,
  type ProjectPoint,
  type ProjectShape,
  type RefitItem,
} from './schema';

/** The free apparent wind, unchanged. */
const freeExposure: ProjectExposure = { best: 1, low: 1, high: 1, source: '' };

/** In use all the time, in every condition. */
const alwaysInUse: ProjectDuty = { default: 1, byCondition: [] };

export const noFlags: ProjectFlags = {
  safetyRequired: false,
  structural: false,
  movingPart: false,
  classRule: null,
};

/** 15 degrees, standard pressure, 70 % humidity: an ordinary day at sea. */
const ordinaryAir: ProjectAir = { temperatureC: 15, pressurePa: 101_325, relativeHumidity: 0.7 };

const defaultEnds: EndMethod = 'dnv';

export const defaultMethods: ProjectMethods = {
  windLaw: openSeaLogLaw,
  ends: defaultEnds,
  inclined: 'cross-flow',
  fairing: 'turbulent',
};

/** A point of the boat's frame: forward of amidships, to port, above the waterplane, m. */
export function point(xM: number, yM: number, zM: number): ProjectPoint {
  return { xM, yM, zM };
}

/** A placement by end points, single and measured. */
export function between(start: ProjectPoint, end: ProjectPoint): ProjectPlacement {
  return { kind: 'endPoints', start, end, basis: 'measured', row: null, pair: false };
}

/** A smooth round bar with both ends free. */
export function roundBar(diameterM: number): ProjectShape {
  return {
    kind: 'roundBar',
    diameter: { m: diameterM, basis: 'measured' },
    surface: { kind: 'smooth' },
    coefficient: null,
    friction: 'model',
    ends: ['free', 'free'],
  };
}

type WithIdentity = 'id' | 'name';

/** A fitting with every default: free wind, always in use, nothing left when stowed, no flag. */
export function blankFitting(
  parts: Pick<ProjectFitting, WithIdentity | 'zoneId' | 'shape' | 'placement'> & Partial<ProjectFitting>,
): ProjectFitting {
  return {
    note: '',
    exposure: freeExposure,
    exposureLeeward: null,
    localTurn: { deg: 0, source: '' },
    shelteredByFittingId: null,
    dutyFraction: alwaysInUse,
    stowed: null,
    massKg: null,
    flags: noFlags,
    excluded: null,
    ...parts,
  };
}

/** A condition with every default: starboard tack, upright, no leeway, an ordinary day, no prices. */
export function blankCondition(
  parts: Pick<ProjectCondition, WithIdentity | 'wind' | 'boatSpeedMs'> & Partial<ProjectCondition>,
): ProjectCondition {
  return {
    note: '',
    tack: 'starboard',
    heelDeg: 0,
    leewayDeg: 0,
    riseM: 0,
    air: ordinaryAir,
    windSpeedDoubtFraction: 0.05,
    windAngleDoubtDeg: 3,
    densityDoubtFraction: 0.01,
    prices: { hullDragPerSideForce: null, driveLostPerHeelingMomentPerM: null, atHeelLimit: false },
    totalResistanceN: null,
    ...parts,
  };
}

/** A refit item that is on, free and weightless. */
export function blankItem(
  parts: Pick<RefitItem, WithIdentity | 'fittingId' | 'change'> & Partial<RefitItem>,
): RefitItem {
  return {
    on: true,
    note: '',
    massChangeKg: 0,
    massPlace: null,
    cost: 0,
    flags: { structural: false, movingPart: false, classRule: null },
    safetyReason: null,
    ...parts,
  };
}

export function blankPlan(parts: Pick<ProjectPlan, WithIdentity> & Partial<ProjectPlan>): ProjectPlan {
  return { note: '', items: [], ...parts };
}

/** A boat of 12 m with a plain deck line, to be replaced by the user's own. */
export const blankBoat: ProjectBoat = {
  name: 'New boat',
  kind: '',
  lengthM: 12,
  beamM: 3.8,
  draughtM: 2.2,
  deckLine: [
    { aftOfStemM: 0, freeboardM: 1.4, halfBeamM: 0.1 },
    { aftOfStemM: 6, freeboardM: 1.2, halfBeamM: 1.9 },
    { aftOfStemM: 12, freeboardM: 1.2, halfBeamM: 1.6 },
  ],
  centreOfLateralResistanceM: null,
  mast: { aftOfStemM: 5, topAboveWaterplaneM: 18 },
};

/** A project with nothing in it yet but one zone. */
export function blankProject(parts: Partial<Project> = {}): Project {
  return {
    format: formatName,
    version: currentVersion,
    name: 'New project',
    notes: '',
    currency: '',
    boat: blankBoat,
    zones: [{ id: 'deck', name: 'Deck' }],
    fittings: [],
    conditions: [],
    profile: null,
    plans: [],
    methods: defaultMethods,
    sources: [],
    ...parts,
  };
}
