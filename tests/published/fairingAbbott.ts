import { fairingSeries } from './fairingMeasured';
import { fairingAt, fairingTopic as topic, liftBand } from './fairingSupport';
import type { KnownDisagreement, PublishedCheck } from './publishedCheck';

const source = {
  title:
    'Abbott and von Doenhoff, Theory of Wing Sections, digitised by NASA’s turbulence modelling resource',
  where: 'NACA 0012, Re 6e6, smooth; digitised from a poor print, as a public program carries it',
};

/** [incidence, cl]: every point but the first, a lift of nought at nought incidence, which cannot be placed. */
const rows = [
  [0.940006, '0.120611'],
  [1.96944, '0.215533'],
  [2.99515, '0.34477'],
  [3.85131, '0.439599'],
  [4.87888, '0.551678'],
  [5.90831, '0.6466'],
  [7.96346, '0.870758'],
  [10.1891, '1.12074'],
  [11.0471, '1.19842'],
  [13.1088, '1.36252'],
  [16.3759, '1.59591'],
  [16.5678, '1.42443'],
  [17.2971, '1.09024'],
] as const;

/** The only point of the print outside the band. */
const poorlyRead: KnownDisagreement = {
  reason:
    'at 0.94 deg the print has 0.017 more lift than the model: a slope of 0.128 per degree, where its next points have 0.109 to 0.115 and 2 pi per radian is 0.110; likely the reading of a poor print',
  relative: -0.143,
};

/** A second tunnel for the lift of NACA 0012, to its stall and beyond. */
export const fairingAbbottChecks: readonly PublishedCheck[] = rows.map(([degrees, printedText]) => {
  const at = (): ReturnType<typeof fairingAt> => fairingAt(0.12, 6e6, degrees);
  return {
    id: `fairing-abbott-cl-${degrees.toFixed(1)}`,
    topic,
    kind: 'measurement',
    source,
    confidence: 'second-hand',
    what: `cl of NACA 0012, ${degrees.toFixed(1)} deg`,
    unit: '1',
    printed: Number(printedText),
    printedText,
    tolerance: { relative: 0.02 },
    toleranceReason: 'inside low to high, and 2 % for reading a poor print',
    compute: () => at().lift,
    band: () => liftBand(at()),
    series: fairingSeries('Abbott and von Doenhoff, Theory of Wing Sections', 'measured', 'lift', at),
    ...(degrees < 1 ? { knownDisagreement: poorlyRead } : {}),
  };
});
