import type {
  Project,
  ProjectCondition,
  ProjectFitting,
  ProjectPlacement,
  ProjectPoint,
  ProjectShape,
} from '../../src/project/file/schema';

/** Invented boats, conditions and fittings for the second route: nothing in them stands for a real one. */

const at = (xM: number, yM: number, zM: number): ProjectPoint => ({ xM, yM, zM });
const typed = (best: number) => ({ best, low: best, high: best, areaBase: 'stated', source: 'stated' });
const held = (best: number) => ({ best, low: best, high: best, source: '' });

function bar(diameterM: number, coefficient: number): ProjectShape {
  return {
    kind: 'roundBar',
    diameter: { m: diameterM, basis: 'measured' },
    surface: { kind: 'smooth' },
    coefficient: typed(coefficient),
    friction: 'zero',
    ends: ['joined', 'surface'],
  };
}

function body(
  length: number,
  width: number,
  height: number,
  [x, y, z]: readonly [number, number, number],
): ProjectShape {
  return {
    kind: 'bluffBody',
    length: { m: length, basis: 'measured' },
    width: { m: width, basis: 'measured' },
    height: { m: height, basis: 'measured' },
    cornerRadiusM: 0,
    coefficients: { x: typed(x), y: typed(y), z: typed(z) },
  };
}

function area(best: number): ProjectShape {
  return {
    kind: 'measuredArea',
    dragAreaM2: { best, low: best, high: best },
    provenance: { kind: 'estimate', source: '' },
    pullTest: null,
  };
}

function ends(
  start: ProjectPoint,
  end: ProjectPoint,
  rest: Partial<Extract<ProjectPlacement, { kind: 'endPoints' }>> = {},
): ProjectPlacement {
  return { kind: 'endPoints', start, end, basis: 'measured', row: null, pair: false, ...rest };
}

function fitting(
  id: string,
  shape: ProjectShape,
  placement: ProjectPlacement,
  rest: Partial<ProjectFitting> = {},
): ProjectFitting {
  return {
    id,
    name: id,
    zoneId: 'all',
    note: '',
    shape,
    placement,
    exposure: held(1),
    exposureLeeward: null,
    localTurn: { deg: 0, source: '' },
    shelteredByFittingId: null,
    dutyFraction: { default: 1, byCondition: [] },
    stowed: null,
    massKg: null,
    flags: { safetyRequired: false, structural: false, movingPart: false, classRule: null },
    excluded: null,
    ...rest,
  };
}

const stanchions: ProjectPlacement = {
  kind: 'taped',
  aftOfStemM: 1.5,
  side: 'starboard',
  athwart: { from: 'deck-edge', inboardOrOutM: 0.05 },
  aboveDeckM: 0.02,
  lengthM: 0.62,
  leanAftDeg: 3,
  leanOutDeg: 8,
  basis: 'measured',
  row: { count: 7, lastAftOfStemM: 12.5, lastAthwartM: 0.11 },
  pair: true,
};

const fittings: readonly ProjectFitting[] = [
  fitting('raked mast', bar(0.19, 0.8), ends(at(1.2, 0, 1.4), at(0.2, 0, 21))),
  fitting('shroud pair', bar(0.009, 1.15), ends(at(0.6, 1.9, 1.3), at(0.3, 0.2, 18), { pair: true }), {
    exposure: held(0.9),
    exposureLeeward: held(0.6),
    localTurn: { deg: 7, source: '' },
  }),
  fitting('stanchions', bar(0.028, 1.05), stanchions, { exposureLeeward: held(0.7) }),
  fitting(
    'row of stays',
    bar(0.012, 1.2),
    ends(at(6, 0.2, 1.2), at(5, 0.1, 9), {
      row: { count: 4, lastStart: at(2, -0.8, 1.1), lastEnd: at(-1, -0.3, 12) },
    }),
    { localTurn: { deg: -11, source: '' } },
  ),
  fitting('pole low to leeward', bar(0.1, 0.95), ends(at(4, 2.4, 0.4), at(-2, 1, 1.4))),
  fitting(
    'box pair',
    body(1.4, 0.6, 0.5, [0.9, 1.15, 0.7]),
    ends(at(-3, 1.1, 1.2), at(-3, 1.1, 1.2), { pair: true }),
    {
      exposure: held(0.8),
      exposureLeeward: held(1.1),
      localTurn: { deg: 5, source: '' },
    },
  ),
  fitting('tall body', body(0.4, 0.3, 1.8, [1.1, 1, 0.5]), ends(at(-5, -0.9, 1.1), at(-5, -0.9, 1.1))),
  fitting('drag area', area(0.31), ends(at(-6, 0.4, 2.2), at(-6, 0.4, 2.2)), {
    dutyFraction: { default: 0.4, byCondition: [{ conditionId: 'upwind', fraction: 0.75 }] },
    stowed: { dragAreaM2: { best: 0.06, low: 0.06, high: 0.06 }, place: at(-4, -1, 1.3), source: '' },
  }),
  fitting('raised pole', bar(0.06, 1.1), {
    kind: 'taped',
    aftOfStemM: 4,
    side: 'centreline',
    athwart: { from: 'centreline', inboardOrOutM: 0.3 },
    aboveDeckM: 0.5,
    lengthM: 3.2,
    leanAftDeg: -70,
    leanOutDeg: 25,
    basis: 'measured',
    row: null,
    pair: false,
  }),
];

function condition(
  id: string,
  rest: Partial<ProjectCondition> & Pick<ProjectCondition, 'wind'>,
): ProjectCondition {
  return {
    id,
    name: id,
    note: '',
    tack: 'starboard',
    boatSpeedMs: 5,
    heelDeg: 0,
    leewayDeg: 0,
    riseM: 0,
    air: { temperatureC: 15, pressurePa: 101_325, relativeHumidity: 0.6 },
    windSpeedDoubtFraction: 0,
    windAngleDoubtDeg: 0,
    densityDoubtFraction: 0,
    prices: { hullDragPerSideForce: 0.04, driveLostPerHeelingMomentPerM: 0.003, atHeelLimit: true },
    totalResistanceN: null,
    ...rest,
  };
}

const conditions: readonly ProjectCondition[] = [
  condition('upwind', {
    wind: { kind: 'true', speedMs: 9, heightM: 10, angleFromCourseDeg: 42 },
    heelDeg: 24,
    leewayDeg: 4.5,
  }),
  condition('reach on port', {
    wind: { kind: 'true', speedMs: 13, heightM: 15, angleFromCourseDeg: 105 },
    tack: 'port',
    boatSpeedMs: 13,
    heelDeg: 17,
    leewayDeg: 2,
    riseM: 0.5,
    air: { temperatureC: 28, pressurePa: 100_200, relativeHumidity: 0.9 },
  }),
  condition('lifted, heeled to windward', {
    wind: { kind: 'instrument', speedMs: 21, angleFromBowDeg: 31, heightUpMastM: 22 },
    tack: 'port',
    boatSpeedMs: 15,
    heelDeg: -12,
    leewayDeg: 1,
    riseM: 1.4,
  }),
  condition('run', {
    wind: { kind: 'true', speedMs: 12, heightM: 10, angleFromCourseDeg: 165 },
    boatSpeedMs: 6,
    heelDeg: -5,
    leewayDeg: -1,
    prices: { hullDragPerSideForce: 0.05, driveLostPerHeelingMomentPerM: 0.01, atHeelLimit: false },
  }),
  condition('rail under', {
    wind: { kind: 'instrument', speedMs: 18, angleFromBowDeg: 38, heightUpMastM: 20 },
    boatSpeedMs: 5.5,
    heelDeg: 36,
    leewayDeg: 7,
    riseM: -0.2,
  }),
];

/** The straight deck line lets the second route do without the product's interpolation. */
export function routeProject(windLaw: Project['methods']['windLaw']): Project {
  return {
    format: 'windtoll-project',
    version: 2,
    name: 'second route',
    notes: '',
    currency: '',
    boat: {
      name: 'invented',
      kind: '',
      lengthM: 14,
      beamM: 4.4,
      draughtM: 3,
      deckLine: [
        { aftOfStemM: 0, freeboardM: 1.5, halfBeamM: 0.8 },
        { aftOfStemM: 6, freeboardM: 1.32, halfBeamM: 1.4 },
        { aftOfStemM: 14, freeboardM: 1.08, halfBeamM: 2.2 },
      ],
      centreOfLateralResistanceM: windLaw.kind === 'power' ? null : { xM: 0.3, yM: 0.1, zM: -1.3 },
      mast: { aftOfStemM: 6, topAboveWaterplaneM: 22 },
    },
    zones: [{ id: 'all', name: 'all' }],
    fittings,
    conditions,
    profile: null,
    plans: [],
    methods: { windLaw, ends: 'dnv', inclined: 'cross-flow', fairing: 'turbulent' },
    sources: [],
  };
}
