import type { Side } from '../../physics/placement/placeMembers';
import type { Basis } from '../../physics/fitting/fittingInput';
import type { WireConstruction } from '../../physics/section/wire';
import type { ProjectShape } from '../file/schema';

type ShapeKind = ProjectShape['kind'];

/** A shape as it is written on a dock. */
export interface SurveyShape {
  readonly word: string;
  readonly kind: ShapeKind;
  /** Of wire and rope. */
  readonly construction?: WireConstruction;
  readonly others: readonly string[];
}

/** In the order of the choice; where several words stand for a kind, the first that fits is written. */
export const surveyShapes: readonly SurveyShape[] = [
  {
    word: 'round bar',
    kind: 'roundBar',
    others: ['round', 'bar', 'tube', 'pipe', 'pole', 'post', 'cylinder', 'round tube', 'circular'],
  },
  {
    word: 'wire',
    kind: 'wire',
    construction: 'spiralStrand',
    others: ['cable', 'strand', 'stay', '1 x 19', '1x19', '1 19 strand'],
  },
  {
    word: 'stranded wire',
    kind: 'wire',
    construction: 'strandedWire',
    others: ['7 x 19', '7x19', '7 19 wire'],
  },
  {
    word: 'rope',
    kind: 'wire',
    construction: 'braidedRope',
    others: ['line', 'cord', 'sheet', 'braided rope'],
  },
  { word: 'rod', kind: 'wire', construction: 'rod', others: ['smooth rod', 'rod rigging'] },
  {
    word: 'ellipse',
    kind: 'ellipticalBar',
    others: ['elliptical', 'oval', 'elliptical bar', 'oval tube'],
  },
  {
    word: 'rectangle',
    kind: 'rectangularBar',
    others: [
      'rectangular',
      'flat bar',
      'flat',
      'square',
      'square tube',
      'rectangular bar',
      'flat or rectangular bar',
    ],
  },
  { word: 'fairing', kind: 'fairing', others: ['faired', 'streamlined', 'foil', 'teardrop'] },
  { word: 'sphere', kind: 'sphere', others: ['ball', 'dome', 'globe'] },
  { word: 'box', kind: 'bluffBody', others: ['block', 'body', 'bag', 'body with edges', 'cube'] },
  { word: 'net', kind: 'net', others: ['netting', 'mesh'] },
  { word: 'measured area', kind: 'measuredArea', others: ['area', 'drag area', 'cda'] },
];

export type SurveySide = Side | 'both';

/** How a bar lies. */
export type SurveyLies = 'upright' | 'fore and aft' | 'athwart';

type Words<Value extends string> = Readonly<Record<Value, readonly string[]>>;

/** Each value by its own name first; the rest is how people write it. */
const sideWords: Words<SurveySide> = {
  centreline: ['centreline', 'centre', 'center', 'centerline', 'middle', 'mid', 'cl', 'c'],
  port: ['port', 'p', 'left', 'pt'],
  starboard: ['starboard', 'stbd', 'stb', 'sb', 's', 'right'],
  both: ['both', 'both sides', 'pair', 'port and starboard', 'p s', 'each side', 'two sides'],
};

const liesWords: Words<SurveyLies> = {
  upright: ['upright', 'vertical', 'up', 'standing', 'v'],
  'fore and aft': ['fore and aft', 'fore aft', 'lengthways', 'along', 'longitudinal'],
  athwart: ['athwart', 'across', 'athwartships', 'transverse', 'crosswise'],
};

const basisWords: Words<Basis> = {
  measured: ['measured', 'm', 'meas', 'taped', 'yes'],
  drawing: ['drawing', 'from a drawing', 'drawn', 'plan'],
  estimated: ['estimated', 'e', 'est', 'estimate', 'guess', 'guessed', 'no'],
};

/** Small letters and digits with single spaces between: "P/S" becomes "p s". */
export function plainWords(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

function valueFor<Value extends string>(words: Words<Value>, text: string): Value | null {
  const wanted = plainWords(text);
  const found = (Object.entries(words) as [Value, readonly string[]][]).find(([, texts]) =>
    texts.includes(wanted),
  );
  return found === undefined ? null : found[0];
}

export function sideFor(text: string): SurveySide | null {
  return valueFor(sideWords, text);
}

export function liesFor(text: string): SurveyLies | null {
  return valueFor(liesWords, text);
}

export function basisFor(text: string): Basis | null {
  return valueFor(basisWords, text);
}

/** The shape that a word stands for; null for one that is not known here. */
export function shapeFor(text: string): SurveyShape | null {
  const wanted = plainWords(text);
  return (
    surveyShapes.find(({ word }) => word === wanted) ??
    surveyShapes.find(({ others }) => others.includes(wanted)) ??
    null
  );
}

/** The word for a shape of the project. */
export function wordForShape(shape: ProjectShape): string {
  const found = surveyShapes.find(
    ({ kind, construction }) =>
      kind === shape.kind && (shape.kind !== 'wire' || shape.construction === construction),
  );
  return found?.word ?? '';
}

/** What may stand in a column of words, for a message. */
export const choicesInWords = {
  shape: surveyShapes.map(({ word }) => word).join(', '),
  side: Object.keys(sideWords).join(', '),
  lies: Object.keys(liesWords).join(', '),
  basis: 'measured, drawing or estimated',
} as const;
