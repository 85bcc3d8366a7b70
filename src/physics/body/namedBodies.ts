import type { Ranged } from '../fitting/fittingInput';
import type { SourceId } from '../sources';

/** A coefficient that goes by a shape's name: for estimates and checks of them, at the Reynolds numbers of boats. */
export interface NamedBody {
  readonly label: string;
  /** The area the coefficient is based on, in words. */
  readonly areaBase: string;
  readonly coefficient: Ranged;
  /** Where `best` was printed. Two sources that differ are named in `note`. */
  readonly source: SourceId;
  readonly note?: string;
}

const frontal = 'frontal area';
const widthTimesLength = 'width across the wind x length';

/** Sharp edges fix where the flow leaves: 15 %, the least where fewer than three sources speak. Assumed. */
const sharp = 0.15;
/** Round fronts: the flow leaves where Reynolds number, roughness and turbulence let it: 30 %. Assumed. */
const rounded = 0.3;

function few(best: number, halfWidth: number): Ranged {
  return { best, low: best * (1 - halfWidth), high: best * (1 + halfWidth) };
}

/**
 * Coefficients by name. Few sources each: half-widths of 15 % with sharp edges, 30 % with round fronts, and wider where
 * two sources ask for it. They hold for wind from the direction named only.
 */
export const namedBodies = {
  cone60: {
    label: 'cone of 60 deg, point to the wind',
    areaBase: frontal,
    coefficient: few(0.51, sharp),
    source: 'data-book',
  },
  cone30: {
    label: 'cone of 30 deg, point to the wind',
    areaBase: frontal,
    coefficient: few(0.34, sharp),
    source: 'data-book',
  },
  halfTubeRoundFront: {
    label: 'half tube, round side to the wind',
    areaBase: widthTimesLength,
    coefficient: few(1.2, rounded),
    source: 'data-book',
  },
  halfTubeOpenFront: {
    label: 'half tube, open side to the wind',
    areaBase: widthTimesLength,
    coefficient: few(2.3, sharp),
    source: 'data-book',
  },
  hollowHemisphereRoundFront: {
    label: 'hollow hemisphere, round side to the wind',
    areaBase: frontal,
    coefficient: few(0.36, rounded),
    source: 'data-book',
    note: 'middle of 0.34 and 0.38',
  },
  hollowHemisphereOpenFront: {
    label: 'hollow hemisphere, open side to the wind',
    areaBase: frontal,
    coefficient: few(1.375, sharp),
    source: 'data-book',
    note: 'middle of 1.33 and 1.42',
  },
  solidHemisphereRoundFront: {
    label: 'solid hemisphere, round side to the wind',
    areaBase: frontal,
    coefficient: few(0.4, rounded),
    source: 'cengel-cimbala',
  },
  solidHemisphereFlatFront: {
    label: 'solid hemisphere, flat side to the wind',
    areaBase: frontal,
    coefficient: few(1.2, sharp),
    source: 'cengel-cimbala',
  },
  disc: {
    label: 'disc across the wind',
    areaBase: frontal,
    // Half of the range of the three beyond it.
    coefficient: { best: 1.135, low: 1.02, high: 1.355 },
    source: 'cengel-cimbala',
    note: 'middle of 1.1 and 1.17 (from memory); discs measured at Re 9000 to 60 000 had 1.15 to 1.28',
  },
  squarePlate: {
    label: 'square plate across the wind',
    areaBase: frontal,
    coefficient: few(1.17, sharp),
    source: 'data-book',
  },
  cubeFace: {
    label: 'cube, a face to the wind',
    areaBase: 'area of a face',
    coefficient: few(1.05, sharp),
    source: 'cengel-cimbala',
    note: '1.07 elsewhere (from memory)',
  },
  cubeCorner: {
    label: 'cube, a corner to the wind',
    areaBase: 'frontal area as seen on the corner',
    coefficient: few(0.81, sharp),
    source: 'white-memory',
  },
  cylinderEndOn1: {
    label: 'cylinder as long as wide, end to the wind',
    areaBase: 'area of the end',
    coefficient: few(0.91, sharp),
    source: 'data-book',
  },
  cylinderEndOn2: {
    label: 'cylinder 2 widths long, end to the wind',
    areaBase: 'area of the end',
    coefficient: few(0.85, sharp),
    source: 'data-book',
  },
  cylinderEndOn4: {
    label: 'cylinder 4 widths long, end to the wind',
    areaBase: 'area of the end',
    coefficient: few(0.87, sharp),
    source: 'data-book',
  },
  cylinderEndOn7: {
    label: 'cylinder 7 widths long, end to the wind',
    areaBase: 'area of the end',
    coefficient: few(0.99, sharp),
    source: 'data-book',
  },
  squareBarFlat: {
    label: 'long square bar, a side to the wind',
    areaBase: widthTimesLength,
    coefficient: few(2.15, sharp),
    source: 'white-2016',
    note: 'middle of 2.1 and 2.2',
  },
  squareBarCorner: {
    label: 'long square bar, a corner to the wind',
    areaBase: 'diagonal x length',
    coefficient: few(1.6, sharp),
    source: 'white-2016',
  },
  squareBarRounded: {
    label: 'long square bar, corners rounded to a fifth of the width',
    areaBase: widthTimesLength,
    coefficient: few(1.2, rounded),
    source: 'cengel-cimbala',
  },
  hexagonBarFlat: {
    label: 'long hexagonal bar, a flat to the wind',
    areaBase: widthTimesLength,
    coefficient: few(0.7, 0.4),
    source: 'white-2016',
  },
  hexagonBarCorner: {
    label: 'long hexagonal bar, a corner to the wind',
    areaBase: widthTimesLength,
    coefficient: few(1.0, 0.3),
    source: 'white-2016',
  },
} as const satisfies Record<string, NamedBody>;

export type NamedBodyId = keyof typeof namedBodies;
