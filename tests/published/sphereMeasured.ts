import { sphereAt, sphereSeries, sphereTopic as topic } from './sphere';
import type { KnownDisagreement, PublishedCheck, SeriesBasis } from './publishedCheck';

/**
 * The reading nearest, in the logarithm, to 1, 2 and 5 times each power of ten. Two stand at exactly Re 1000: the first
 * listed is taken, 0.472; the second is 0.483, and either lies inside the band.
 */
const roosWillmarth = [
  [5.33, '7.060'],
  [11.0, '4.010'],
  [21.1, '2.820'],
  [50.6, '1.580'],
  [101, '1.080'],
  [193, '0.732'],
  [500, '0.547'],
  [1000, '0.472'],
  [2000, '0.430'],
  [5570, '0.460'],
  [9620, '0.490'],
  [19_500, '0.500'],
  [52_400, '0.503'],
  [100_000, '0.467'],
] as const;

/** Every value of the table from Re 1 up at 1, 2 and 5 times a power of ten. */
const morsiAlexander = [
  [1, '26.5'],
  [2, '14.4'],
  [5, '6.9'],
  [10, '4.1'],
  [20, '2.55'],
  [50, '1.5'],
  [100, '1.07'],
  [200, '0.77'],
  [500, '0.55'],
  [1000, '0.46'],
  [2000, '0.42'],
  [5000, '0.385'],
  [10_000, '0.41'],
  [20_000, '0.452'],
  [50_000, '0.488'],
] as const;

const achenbach = [
  [44_000, '0.48'],
  [60_000, '0.50'],
  [80_000, '0.51'],
  [100_000, '0.52'],
  [200_000, '0.52'],
  [300_000, '0.30'],
  [400_000, '0.07'],
  [600_000, '0.08'],
  [800_000, '0.095'],
  [1_000_000, '0.11'],
] as const;

interface Readings {
  readonly name: string;
  readonly title: string;
  readonly where: string;
  readonly kind: PublishedCheck['kind'];
  readonly basis: SeriesBasis;
  readonly points: readonly (readonly [reynolds: number, printed: string])[];
}

const readings: readonly Readings[] = [
  {
    name: 'roos-willmarth',
    title: 'Roos and Willmarth 1971, AIAA J. 9, 285',
    where: 'measured spheres, single runs, as tabulated in a public collection of shear flow data',
    kind: 'measurement',
    basis: 'measured',
    points: roosWillmarth,
  },
  {
    name: 'morsi-alexander',
    title: 'Morsi and Alexander 1972, J. Fluid Mech. 55, 193',
    where: 'their table of the experimental curve, as a public process-engineering program prints it',
    kind: 'external',
    basis: 'handbook',
    points: morsiAlexander,
  },
  {
    name: 'achenbach-fig-4',
    title: 'Achenbach 1972, J. Fluid Mech. 54, 565',
    where: 'fig. 4, points read by the author of a public program (the paper prints no numbers)',
    kind: 'measurement',
    basis: 'measured',
    points: achenbach,
  },
];

/** Where the crisis is steepest its band would hold any number. */
const midCrisis = 300_000;
const tooWide: KnownDisagreement = {
  reason:
    'in the middle of the crisis: 0.30 lies inside the band of 0.07 to 0.49, too wide to count as a check',
  relative: -0.133,
};

/** Spheres measured by people who fitted nothing, and a table of the experimental curve. */
export const sphereMeasuredChecks: readonly PublishedCheck[] = readings.flatMap(
  ({ name, title, where, kind, basis, points }) =>
    points.map(([Re, printedText]): PublishedCheck => ({
      id: `sphere-${name}-${Re}`,
      topic,
      kind,
      source: { title, where },
      confidence: 'second-hand',
      what: `smooth sphere at Re ${Re}`,
      unit: '1',
      printed: Number(printedText),
      printedText,
      tolerance: { relative: 0.05 },
      toleranceReason: 'inside low to high, give or take 5 % of a chart or a single run',
      compute: () => sphereAt(Re).best,
      series: sphereSeries(title, basis, Re),
      ...(Re === midCrisis ? { knownDisagreement: tooWide } : { band: () => sphereAt(Re) }),
    })),
);
