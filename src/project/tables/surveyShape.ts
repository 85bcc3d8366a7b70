import type { Basis } from '../../physics/fitting/fittingInput';
import { noSource } from '../catalogue/shapes';
import { noseForward } from '../file/directions';
import type { ProjectDimension, ProjectShape } from '../file/schema';
import { isMember } from '../file/shapeKinds';
import type { SurveyKey } from './surveyColumns';
import type { SurveyShape } from './surveyWords';

/** Sizes of a shape in the survey's columns, SI; null for what was not measured or does not belong to it. */
export interface SurveySizes {
  readonly width: number | null;
  /** Of a box fore and aft, of a net upwards. A bar's length belongs to its place. */
  readonly length: number | null;
  /** Of a box its height, of a net its twine. */
  readonly thickness: number | null;
  readonly dragArea: number | null;
}

export type SizeKey = keyof SurveySizes & SurveyKey;

type ShapeKind = ProjectShape['kind'];

/** The sizes that each kind cannot do without. */
export const neededSizes: Readonly<Record<ShapeKind, readonly SizeKey[]>> = {
  roundBar: ['width'],
  wire: ['width'],
  ellipticalBar: ['width', 'thickness'],
  rectangularBar: ['width', 'thickness'],
  fairing: ['width', 'thickness'],
  sphere: ['width'],
  net: ['width', 'length'],
  bluffBody: ['length', 'width', 'thickness'],
  measuredArea: ['dragArea'],
};

/** The kinds that are bars, whose length belongs to their place. */
export function isBarKind(kind: ShapeKind): boolean {
  return !['sphere', 'net', 'bluffBody', 'measuredArea'].includes(kind);
}

/** What a survey would say of a shape's sizes. */
export function sizesOf(shape: ProjectShape): SurveySizes {
  const none = { width: null, length: null, thickness: null, dragArea: null };
  switch (shape.kind) {
    case 'roundBar':
    case 'wire':
    case 'sphere':
      return { ...none, width: shape.diameter.m };
    case 'ellipticalBar':
    case 'rectangularBar':
    case 'fairing':
      return { ...none, width: shape.chord.m, thickness: shape.thickness.m };
    case 'net':
      return { ...none, width: shape.width.m, length: shape.height.m, thickness: shape.wireDiameter.m };
    case 'bluffBody':
      return { ...none, width: shape.width.m, length: shape.length.m, thickness: shape.height.m };
    case 'measuredArea':
      return { ...none, dragArea: shape.dragAreaM2.best };
  }
}

type Provenance = Extract<ProjectShape, { kind: 'measuredArea' }>['provenance']['kind'];

const areaBasis: Readonly<Record<Provenance, Basis>> = {
  'pull-test': 'measured',
  tunnel: 'measured',
  paper: 'drawing',
  estimate: 'estimated',
};

/** Where a surveyed drag area is taken to come from; its source says what is known of it. */
const areaProvenance: Readonly<Record<Basis, Provenance>> = {
  measured: 'pull-test',
  drawing: 'paper',
  estimated: 'estimate',
};

/** How the first of a shape's sizes was obtained. */
export function basisOfShape(shape: ProjectShape): Basis {
  if (shape.kind === 'measuredArea') return areaBasis[shape.provenance.kind];
  if ('diameter' in shape) return shape.diameter.basis;
  return 'chord' in shape ? shape.chord.basis : shape.width.basis;
}

const plainSolidity = 0.2;
const twineM = 0.002;

/** Each side of a drag area that somebody read or guessed, as a share of it (common practice, no source). */
const areaDoubt: Readonly<Record<Basis, number>> = { measured: 0.1, drawing: 0.25, estimated: 0.25 };

/**
 * A new shape from surveyed sizes, all that it needs being there: smooth, both ends free or the foot on the deck, nose
 * forward. Null where a needed size is missing.
 */
export function shapeFrom(
  { kind, construction = 'spiralStrand' }: Pick<SurveyShape, 'kind' | 'construction'>,
  sizes: SurveySizes,
  basis: Basis,
  standsOnDeck: boolean,
): ProjectShape | null {
  if (neededSizes[kind].some((key) => sizes[key] === null)) return null;
  const size = (key: SizeKey): ProjectDimension => ({ m: sizes[key] ?? 0, basis });
  const ends = [standsOnDeck ? 'surface' : 'free', 'free'] as const;
  const member = { coefficient: null, friction: 'model', ends } as const;
  const section = {
    chord: size('width'),
    thickness: size('thickness'),
    direction: noseForward,
    ...member,
  };
  switch (kind) {
    case 'roundBar':
      return { kind, diameter: size('width'), surface: { kind: 'smooth' }, ...member };
    case 'wire':
      return { kind, construction, diameter: size('width'), coefficient: null, friction: 'model' };
    case 'ellipticalBar':
    case 'fairing':
      return { kind, ...section };
    case 'rectangularBar':
      return { kind, ...section, cornerRadiusM: 0 };
    case 'sphere':
      return { kind, diameter: size('width'), surface: { kind: 'smooth' }, coefficient: null };
    case 'net':
      return netFrom(sizes, basis);
    case 'bluffBody':
      return {
        kind,
        length: size('length'),
        width: size('width'),
        height: size('thickness'),
        cornerRadiusM: 0,
        coefficients: { x: null, y: null, z: null },
      };
    case 'measuredArea':
      return areaFrom(sizes.dragArea ?? 0, basis);
  }
}

/** A net that faces abeam; its twine and solidity are assumed until they are measured. */
function netFrom({ width, length, thickness }: SurveySizes, basis: Basis): ProjectShape {
  const wireDiameter: ProjectDimension =
    thickness === null ? { m: twineM, basis: 'estimated' } : { m: thickness, basis };
  return {
    kind: 'net',
    facing: 'y',
    width: { m: width ?? 0, basis },
    height: { m: length ?? 0, basis },
    solidity: plainSolidity,
    wireDiameter,
  };
}

function areaFrom(areaM2: number, basis: Basis): ProjectShape {
  const doubt = areaDoubt[basis];
  return {
    kind: 'measuredArea',
    dragAreaM2: { best: areaM2, low: areaM2 * (1 - doubt), high: areaM2 * (1 + doubt) },
    provenance: {
      kind: areaProvenance[basis],
      source: `Survey, ${basis}; ${100 * doubt} % either way: ${noSource}.`,
    },
    pullTest: null,
  };
}

/** A shape of the project with some of its sizes measured anew; what else is known of it stays. */
export function resized(shape: ProjectShape, sizes: Partial<SurveySizes>, basis: Basis): ProjectShape {
  const given = (old: ProjectDimension, key: SizeKey): ProjectDimension => {
    const m = sizes[key];
    return m === undefined || m === null ? old : { m, basis };
  };
  if (isMember(shape)) {
    return 'chord' in shape
      ? { ...shape, chord: given(shape.chord, 'width'), thickness: given(shape.thickness, 'thickness') }
      : { ...shape, diameter: given(shape.diameter, 'width') };
  }
  switch (shape.kind) {
    case 'sphere':
      return { ...shape, diameter: given(shape.diameter, 'width') };
    case 'net':
      return {
        ...shape,
        width: given(shape.width, 'width'),
        height: given(shape.height, 'length'),
        wireDiameter: given(shape.wireDiameter, 'thickness'),
      };
    case 'bluffBody':
      return {
        ...shape,
        length: given(shape.length, 'length'),
        width: given(shape.width, 'width'),
        height: given(shape.height, 'thickness'),
      };
    case 'measuredArea':
      return sizes.dragArea === undefined || sizes.dragArea === null
        ? shape
        : areaFrom(sizes.dragArea, basis);
  }
}

/** The shape with all its sizes said to be obtained in another way. */
export function withBasis(shape: ProjectShape, basis: Basis): ProjectShape {
  return shape.kind === 'measuredArea' ? shape : resized(shape, sizesOf(shape), basis);
}
