import type { RoundBarDrag } from '../../src/physics/section/roundBar';
import {
  strandedCableCoefficient,
  wireDrag,
  wireRegimes,
  type WireConstruction,
} from '../../src/physics/section/wire';
import { outerStrandRatio } from '../../src/physics/section/wireTable';
import {
  inSeries,
  toLastDigit,
  within,
  type PublishedCheck,
  type Row,
  type SeriesBasis,
  type SeriesPoint,
} from './publishedCheck';

const topic = 'Wires and ropes';

/** The model's curve for a wire square to the wind. */
export function wireAt(construction: WireConstruction, Re: number): RoundBarDrag {
  const out = { best: 0, low: 0, high: 0, regime: 0, logCrisisReynolds: 0 };
  return wireDrag(construction, Re, 1, out);
}

/** Laid wires of any construction are one family; the braid has a source of its own or none. */
function wireSeries(
  source: string,
  basis: SeriesBasis,
  construction: WireConstruction,
  Re: number,
): SeriesPoint {
  const regime = wireRegimes(construction)[wireAt(construction, Re).regime] ?? '';
  return { source, basis, regime: `laid wire, ${regime}`, range: () => wireAt(construction, Re) };
}

const hoerner = {
  topic,
  kind: 'transcription',
  source: { title: 'Hoerner, Fluid-Dynamic Drag (1965)', where: 'p. 4-5, stranded cables' },
  confidence: 'second-hand',
  unit: '1',
} as const;

const strandChecks = toLastDigit(
  hoerner,
  (
    [
      [0, '1.19'],
      [0.7 / 3.3, '1.14'],
      [1.3 / 3.7, '1.04'],
    ] as const
  ).map(([ratio, printed]): Row => [
    `wire-hoerner-${ratio.toFixed(3)}`,
    `cable at Re about 1e4, outer strand ${ratio.toFixed(3)} of its diameter`,
    printed,
    () => strandedCableCoefficient(ratio),
  ]),
);

const betweenStrands = inSeries(
  within(hoerner, { absolute: 5e-4 }, 'the node is the straight line to three decimals', [
    [
      'wire-strand-node-1x19',
      'straight line at an outer strand of 0.2, against the node of 1 x 19 at Re 1e4',
      '1.1429',
      () => wireAt('spiralStrand', 1e4).best,
    ],
    [
      'wire-strand-node-7x19',
      'straight line at an outer strand of 1/3, against the node of 7 x 19 at Re 1e4',
      '1.0529',
      () => wireAt('strandedWire', 1e4).best,
    ],
    [
      'wire-strand-line-1x19',
      'the same line, computed',
      '1.1429',
      () => strandedCableCoefficient(outerStrandRatio.spiralStrand),
    ],
    [
      'wire-strand-line-7x19',
      'the same line, computed',
      '1.0529',
      () => strandedCableCoefficient(outerStrandRatio.strandedWire),
    ],
  ]),
  (index) =>
    wireSeries(hoerner.source.title, 'measured', index % 2 === 0 ? 'spiralStrand' : 'strandedWire', 1e4),
);

const farChecks = inSeries(
  within(
    hoerner,
    { absolute: 0.005 },
    'half a unit of the second decimal, as the others are printed',
    (['spiralStrand', 'strandedWire'] as const).map((construction): Row => [
      `wire-hoerner-1e6-${construction}`,
      `stranded cable at Re 1e6 (${construction})`,
      '1.0',
      () => wireAt(construction, 1e6).best,
    ]),
  ),
  (index) => wireSeries(hoerner.source.title, 'measured', index === 0 ? 'spiralStrand' : 'strandedWire', 1e6),
);

const designChecks: readonly PublishedCheck[] = (
  [
    ['braidedRope', 3e4, '1.1'],
    ['braidedRope', 3e4, '1.3'],
    ['spiralStrand', 3e4, '1.2'],
    ['spiralStrand', 1e6, '0.9'],
    ['strandedWire', 3e4, '1.3'],
    ['strandedWire', 1e6, '1.1'],
  ] as const
).map(([construction, Re, printedText]) => ({
  id: `wire-design-${construction}-${Re}-${printedText}`,
  topic,
  kind: 'transcription',
  source: { title: 'Design values for ropes and wire cables', where: 'wind codes and handbooks' },
  confidence: 'from memory',
  what: `${construction} at Re ${Re}: inside the band that was drawn around it`,
  unit: '1',
  printed: Number(printedText),
  printedText,
  tolerance: { relative: 0.05 },
  toleranceReason: 'inside low to high, give or take 5 %: two figures from memory',
  compute: () => wireAt(construction, Re).best,
  band: () => wireAt(construction, Re),
}));

const shenTitle = 'Shen, Bao, Qian, Guo, Song: drag of multi-bundled conductors, abstract';
const conductorRe = 5e4;
const inBand =
  'inside low to high, give or take half a unit of the last digit; the speed is not in the abstract';

const conductors: readonly PublishedCheck[] = [
  {
    id: 'wire-conductor-xu',
    topic,
    kind: 'measurement',
    source: {
      title: 'Xu, Deng, Hu, Ma 2019, J. Fluids Struct. 91, 102702, abstract',
      where: 'single stranded conductor, recommended from tunnel tests',
    },
    confidence: 'read',
    what: `stranded conductor, taken as 1 x 19 at Re ${conductorRe}`,
    unit: '1',
    printed: 1,
    printedText: '1.0',
    tolerance: { absolute: 0.05 },
    toleranceReason: inBand,
    compute: () => wireAt('spiralStrand', conductorRe).best,
    band: () => wireAt('spiralStrand', conductorRe),
    series: wireSeries('Xu, Deng, Hu, Ma 2019', 'measured', 'spiralStrand', conductorRe),
  },
  {
    id: 'wire-conductor-shen',
    topic,
    kind: 'measurement',
    source: { title: shenTitle, where: 'isolated conductor of 23.94 mm, upper envelope' },
    confidence: 'read',
    what: `stranded conductor of 23.94 mm, taken as 1 x 19 at Re ${conductorRe}`,
    unit: '1',
    printed: 1.02,
    printedText: '1.02',
    tolerance: { absolute: 0.005 },
    toleranceReason: inBand,
    compute: () => wireAt('spiralStrand', conductorRe).best,
    band: () => wireAt('spiralStrand', conductorRe),
    series: wireSeries('Shen, Bao, Qian, Guo, Song', 'measured', 'spiralStrand', conductorRe),
  },
  {
    id: 'wire-conductor-ratio',
    topic,
    kind: 'measurement',
    source: { title: shenTitle, where: '13 % less than the round cylinder at high speed' },
    confidence: 'read',
    what: `stranded over smooth at Re ${conductorRe}`,
    unit: '1',
    printed: 0.87,
    printedText: '0.87',
    tolerance: { relative: 0.1 },
    toleranceReason: 'the speed is not in the abstract, and both curves move with it: 10 %',
    compute: () => wireAt('spiralStrand', conductorRe).best / wireAt('rod', conductorRe).best,
  },
];

const towCable: PublishedCheck = {
  id: 'wire-armoured-tow-cable',
  topic,
  kind: 'measurement',
  source: {
    title: 'Hydrodynamic loading on armored towcables, abstract',
    where: 'normal drag coefficient, any Reynolds number',
  },
  confidence: 'read',
  what: 'bare armoured tow cable in water, taken as 1 x 19 at Re 3e4',
  unit: '1',
  printed: 1.5,
  printedText: '1.5',
  tolerance: { relative: 0.1 },
  toleranceReason: 'an abstract of two figures',
  compute: () => wireAt('spiralStrand', 3e4).best,
  series: wireSeries('Hydrodynamic loading on armored towcables', 'measured', 'spiralStrand', 3e4),
  leftOut:
    'deduced from how a slack cable tows in water, where it is free to strum (that it did is our reading, the abstract is silent); the model is of a taut wire in air that stands still, and lock-in is not in it',
  knownDisagreement: {
    reason:
      'a long slack cable in water strums in its own vortices and drags more for it; the model is for a taut wire in air that stands still, and lock-in is not modelled',
    relative: -0.26,
  },
};

export const wireChecks: readonly PublishedCheck[] = [
  ...strandChecks,
  ...betweenStrands,
  ...farChecks,
  ...designChecks,
  ...conductors,
  towCable,
];
