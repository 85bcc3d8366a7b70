import type { Air } from '../../src/physics/air/air';
import { laminarFriction, turbulentFriction } from '../../src/physics/section/skinFriction';
import { boatVector } from '../../src/physics/vector/vector3';
import { toLastDigit, type PublishedCheck, type Row } from './publishedCheck';
import { bar, conditionOf, evaluate, fluid } from './support';

const topic = 'Inclined bars and friction';

const diameterM = 0.02;
const lengthM = 1;
const windMs = 10;
const rho = 1.225;
/** Of a Cd 1.1 bar square to the wind, per unit of coefficient. */
const pressureArea = (rho / 2) * windMs ** 2 * diameterM * lengthM;

/** Force on a bar of coefficient 1.1 whose axis stands at `angleDeg` to a wind from ahead, track frame. */
function forceAt(
  angleDeg: number,
  friction: boolean,
  air: Air = fluid(rho, 1.4607e-5),
): { x: number; z: number } {
  const angle = (angleDeg * Math.PI) / 180;
  const fitting = bar({
    diameterM,
    end: boatVector(lengthM * Math.cos(angle), 0, 1 + lengthM * Math.sin(angle)),
    coefficient: 1.1,
    friction,
  });
  const { deployed } = evaluate(fitting, conditionOf(), air);
  return { x: deployed.forceTrackXN, z: deployed.forceTrackZN };
}

/** [angle between wind and axis, 1.1 sin^3 a + 0.02, 1.1 sin^2 a cos a] */
const hoernerRows = [
  [90, '1.1200', '0.0000'],
  [75, '1.0113', '0.2656'],
  [60, '0.7345', '0.4125'],
  [45, '0.4089', '0.3889'],
  [30, '0.1575', '0.2382'],
  [20, '0.0640', '0.1209'],
  [0, '0.0200', '0.0000'],
] as const;

/** Hoerner's round figure for the friction, pi Cf; the bars here have none, so it is added to what they give. */
const hoernerFriction = 0.02;

const hoernerChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Hoerner, Fluid-Dynamic Drag, ch. 3, inclined cylinders',
      where: 'CD = 1.1 sin^3 a + 0.02, CL = 1.1 sin^2 a cos a',
    },
    confidence: 'second-hand',
    unit: '1',
  },
  hoernerRows.flatMap(([angle, drag, lift]): Row[] => [
    [
      `inclined-drag-${angle}`,
      `drag along the wind at ${angle} deg, with the constant 0.02`,
      drag,
      () => -forceAt(angle, false).x / pressureArea + hoernerFriction,
    ],
    [
      `inclined-lift-${angle}`,
      `lift at ${angle} deg`,
      lift,
      () => Math.abs(forceAt(angle, false).z) / pressureArea,
    ],
  ]),
);

const sinSquared = [
  [75, '0.9330'],
  [60, '0.7500'],
  [45, '0.5000'],
  [30, '0.2500'],
  [20, '0.1170'],
] as const;

const normalChecks = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Cross-flow principle (R. T. Jones; Gowen and Perkins 1953; Hoerner)',
      where: 'force normal to the axis, sin^2 a',
    },
    confidence: 'second-hand',
    unit: '1',
  },
  sinSquared.map(([angle, printed]): Row => [
    `inclined-normal-${angle}`,
    `normal force at ${angle} deg over that at 90 deg`,
    printed,
    () => {
      const { x, z } = forceAt(angle, false);
      return Math.hypot(x, z) / (1.1 * pressureArea);
    },
  ]),
);

/** Air in which the axial flow of 5 m/s over 1 m meets Cf 0.004: the Prandtl-Schlichting line, solved for Re. */
const frictionReynolds = 10 ** ((0.455 / 0.004) ** (1 / 2.58));
const airOfFriction = fluid(rho, (windMs * 0.5 * lengthM) / frictionReynolds);

/** The axis leans 30 deg from upright with the wind: 60 deg to the wind that comes from ahead. */
const vectorCheck = toLastDigit(
  {
    topic,
    kind: 'transcription',
    source: {
      title: 'Cross-flow principle in vector form',
      where: 'worked by hand: d 20 mm, 1 m, Cd 1.1, 10 m/s, axis 30 deg from upright',
    },
    confidence: 'derived',
    unit: 'N',
  },
  [
    ['inclined-vector-x', 'force along the track, no friction', '-0.875227', () => forceAt(60, false).x],
    ['inclined-vector-z', 'force upwards, no friction', '0.505313', () => forceAt(60, false).z],
    [
      'inclined-vector-friction-x',
      'force along the track, Cf 0.004',
      '-0.877151',
      () => forceAt(60, true, airOfFriction).x,
    ],
    [
      'inclined-vector-friction-z',
      'force upwards, Cf 0.004',
      '0.501980',
      () => forceAt(60, true, airOfFriction).z,
    ],
  ],
);

/** [Re, Blasius, Prandtl-Schlichting] */
const frictionRows = [
  [1e5, '0.004200', '0.007156'],
  [5e5, '0.001878', '0.005106'],
  [1e6, '0.001328', '0.004471'],
  [1e7, '0.000420', '0.003004'],
] as const;

const frictionChecks = frictionRows.flatMap(([Re, blasius, turbulent]) => {
  const common = { topic, kind: 'transcription', confidence: 'second-hand', unit: '1' } as const;
  return [
    ...toLastDigit({ ...common, source: { title: 'Blasius, laminar plate', where: '1.328 / Re^0.5' } }, [
      [`friction-blasius-${Re}`, `mean friction at Re ${Re}`, blasius, () => laminarFriction(Re)],
    ]),
    ...toLastDigit(
      {
        ...common,
        source: {
          title: 'Prandtl-Schlichting, in Fox and McDonald, Introduction to Fluid Mechanics',
          where: '0.455 / (log10 Re)^2.58',
        },
      },
      [[`friction-turbulent-${Re}`, `mean friction at Re ${Re}`, turbulent, () => turbulentFriction(Re)]],
    ),
  ];
});

export const inclinedChecks: readonly PublishedCheck[] = [
  ...hoernerChecks,
  ...normalChecks,
  ...vectorCheck,
  ...frictionChecks,
];
