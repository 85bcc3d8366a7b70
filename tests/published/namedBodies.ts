import { namedBodies, type NamedBodyId } from '../../src/physics/body/namedBodies';
import type { Confidence } from '../../src/physics/sources';
import {
  halfLastDigit,
  inSeries,
  within,
  type Band,
  type PublishedCheck,
  type SeriesPoint,
} from './publishedCheck';

const topic = 'Named shapes';

const dataBook = "Matthews, Aeronautical Engineer's Data Book, p. 95";
const cengel = 'Cengel and Cimbala, Fluid Mechanics, tables 11-1 and 11-2';
const white2016 = 'White, Fluid Mechanics, 8th ed. (2016), table 7.2';
const white = 'White, Fluid Mechanics';

const printed: readonly (readonly [NamedBodyId, string, string, Confidence])[] = [
  ['cone60', '0.51', dataBook, 'read'],
  ['cone30', '0.34', dataBook, 'read'],
  ['halfTubeRoundFront', '1.20', dataBook, 'read'],
  ['halfTubeOpenFront', '2.30', dataBook, 'read'],
  ['hollowHemisphereRoundFront', '0.34', dataBook, 'read'],
  ['hollowHemisphereRoundFront', '0.38', dataBook, 'read'],
  ['hollowHemisphereOpenFront', '1.33', dataBook, 'read'],
  ['hollowHemisphereOpenFront', '1.42', dataBook, 'read'],
  ['solidHemisphereRoundFront', '0.4', cengel, 'second-hand'],
  ['solidHemisphereFlatFront', '1.2', cengel, 'second-hand'],
  ['disc', '1.1', cengel, 'second-hand'],
  ['disc', '1.17', white, 'from memory'],
  ['squarePlate', '1.17', dataBook, 'read'],
  ['cubeFace', '1.05', cengel, 'second-hand'],
  ['cubeCorner', '0.81', white, 'from memory'],
  ['cylinderEndOn1', '0.91', dataBook, 'read'],
  ['cylinderEndOn2', '0.85', dataBook, 'read'],
  ['cylinderEndOn4', '0.87', dataBook, 'read'],
  ['cylinderEndOn7', '0.99', dataBook, 'read'],
  ['squareBarFlat', '2.1', white2016, 'second-hand'],
  ['squareBarFlat', '2.2', cengel, 'second-hand'],
  ['squareBarCorner', '1.6', white2016, 'second-hand'],
  ['squareBarRounded', '1.2', cengel, 'second-hand'],
  ['hexagonBarFlat', '0.7', white2016, 'second-hand'],
  ['hexagonBarCorner', '1.0', white2016, 'second-hand'],
];

/** A number between two that differ is held to their middle: half of what they differ by, or of the last digit. */
function toleranceOf(id: NamedBodyId, printedText: string): number {
  const all = printed.filter(([other]) => other === id).map(([, text]) => Number(text));
  const spread = (Math.max(...all) - Math.min(...all)) / 2;
  return Math.max(halfLastDigit(printedText), spread * (1 + 1e-12));
}

/** Every shape is a regime of its own. */
function namedSeries(id: NamedBodyId, title: string): SeriesPoint {
  const source = title === dataBook ? title : (title.split(',')[0] ?? title);
  return {
    source,
    basis: 'handbook',
    regime: `named, ${namedBodies[id].label}`,
    range: () => namedBodies[id].coefficient,
  };
}

const printedChecks: readonly PublishedCheck[] = printed.map(([id, printedText, title, confidence]) => ({
  id: `named-${id}-${printedText}`,
  topic,
  kind: 'transcription',
  source: { title, where: 'table of drag coefficients' },
  confidence,
  what: `${namedBodies[id].label}, on ${namedBodies[id].areaBase}`,
  unit: '1',
  printed: Number(printedText),
  printedText,
  tolerance: { absolute: toleranceOf(id, printedText) },
  toleranceReason: 'half a unit of the last digit, or the middle of two prints that differ',
  compute: () => namedBodies[id].coefficient.best,
  series: namedSeries(id, title),
  ...(id === 'squareBarFlat'
    ? { leftOut: 'the same number of the same book is counted among the rectangles' }
    : {}),
}));

const cubeElsewhere = inSeries(
  within(
    {
      topic,
      kind: 'external',
      source: { title: white, where: 'table of drag coefficients, cube' },
      confidence: 'from memory',
      unit: '1',
    },
    { absolute: 0.02 },
    'handbooks differ by 0.02',
    [
      [
        'named-cubeFace-1.07',
        'cube, a face to the wind, in another handbook',
        '1.07',
        () => namedBodies.cubeFace.coefficient.best,
      ],
    ],
  ),
  () => namedSeries('cubeFace', white),
);

/** The reading nearest, in the logarithm, to 1e4, 2e4 and 5e4. */
const roosWillmarth = [
  [9020, '1.200'],
  [22_400, '1.270'],
  [50_100, '1.160'],
] as const;

const discBand = (): Band => namedBodies.disc.coefficient;

const measuredDiscs: readonly PublishedCheck[] = roosWillmarth.map(([Re, printedText]) => ({
  id: `named-disc-roos-willmarth-${Re}`,
  topic,
  kind: 'measurement',
  source: {
    title: 'Roos and Willmarth 1971, AIAA J. 9, 285',
    where: 'measured discs, single runs, as tabulated in a public collection of shear flow data',
  },
  confidence: 'second-hand',
  what: `disc across the wind at Re ${Re}`,
  unit: '1',
  printed: Number(printedText),
  printedText,
  tolerance: { relative: 0.05 },
  toleranceReason: 'inside low to high, give or take 5 % of a single run',
  compute: () => namedBodies.disc.coefficient.best,
  band: discBand,
  series: { ...namedSeries('disc', 'Roos and Willmarth 1971'), basis: 'measured' },
}));

export const namedBodyChecks: readonly PublishedCheck[] = [
  ...printedChecks,
  ...cubeElsewhere,
  ...measuredDiscs,
];
