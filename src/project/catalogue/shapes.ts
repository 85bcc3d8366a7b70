import { noseForward } from '../file/directions';
import type {
  ProjectRanged,
  ProjectShape,
  ProjectShapeOf,
  ProjectSurface,
  ProjectTypedCoefficient,
} from '../file/schema';

type Bar = Extract<ProjectShape, { kind: 'roundBar' }>;
type Ends = Bar['ends'];
type Three = readonly [best: number, low: number, high: number];

/** Said with every number of the catalogue that nobody published. */
export const noSource = 'common practice, no source';

const brightSteel: ProjectSurface = { kind: 'finish', finish: 'brightSteel' };
const finePaint: ProjectSurface = { kind: 'finish', finish: 'finePaint' };

/** Height of loose cloth over its neighbours, m (common practice, no source). */
const clothM = 0.0002;

/** To a tenth of a millimetre. */
function sizeM(valueM: number): number {
  return Math.max(Math.round(valueM * 10_000) / 10_000, 0.0005);
}

function estimated(valueM: number) {
  return { m: sizeM(valueM), basis: 'estimated' } as const;
}

function bar(
  diameterM: number,
  surface: ProjectSurface,
  ends: Ends,
  coefficient: Bar['coefficient'] = null,
): Bar {
  return { kind: 'roundBar', diameter: estimated(diameterM), surface, coefficient, friction: 'model', ends };
}

function typed(areaBase: string, [best, low, high]: Three, why: string): ProjectTypedCoefficient {
  return { best, low, high, areaBase, source: `${why}: ${noSource}` };
}

/** Stainless tube, one end on deck unless said otherwise. */
export function tube(diameterM: number, ends: Ends = ['surface', 'joined']): Bar {
  return bar(diameterM, brightSteel, ends);
}

export function paintedTube(diameterM: number, ends: Ends): Bar {
  return bar(diameterM, finePaint, ends);
}

function wireOf(construction: ProjectShapeOf<'wire'>['construction'], diameterM: number): ProjectShape {
  const diameter = estimated(diameterM);
  return { kind: 'wire', construction, diameter, coefficient: null, friction: 'model' };
}

export function rod(diameterM: number): ProjectShape {
  return wireOf('rod', diameterM);
}

export function wire(diameterM: number): ProjectShape {
  return wireOf('spiralStrand', diameterM);
}

export function rope(diameterM: number): ProjectShape {
  return wireOf('braidedRope', diameterM);
}

export function rolledSail(diameterM: number): Bar {
  return bar(diameterM, { kind: 'roughness', roughnessM: clothM }, ['joined', 'joined']);
}

/** A member of a section that no family has, or that a sail hides: a coefficient on its thickness across the wind. */
export function sectionBar(thicknessM: number, coefficient: Three, why: string, ends: Ends): Bar {
  return bar(thicknessM, finePaint, ends, typed('thickness x length', coefficient, why));
}

interface BodyCoefficients {
  /** On the area seen from ahead (x), from the side (y), from above (z); none is the cube's. */
  readonly x?: Three;
  readonly y?: Three;
  readonly z?: Three;
  readonly why: string;
}

export function body(
  [lengthM, widthM, heightM]: readonly [number, number, number],
  coefficients: BodyCoefficients | null = null,
): ProjectShape {
  const axis = (which: 'x' | 'y' | 'z', areaBase: string): ProjectTypedCoefficient | null => {
    const three = coefficients?.[which];
    return coefficients === null || three === undefined ? null : typed(areaBase, three, coefficients.why);
  };
  return {
    kind: 'bluffBody',
    length: estimated(lengthM),
    width: estimated(widthM),
    height: estimated(heightM),
    cornerRadiusM: 0,
    coefficients: {
      x: axis('x', 'width x height'),
      y: axis('y', 'length x height'),
      z: axis('z', 'length x width'),
    },
  };
}

/** A drag area from a sketch, with what the sketch was. */
export function dragArea([best, low, high]: Three, why: string): ProjectShape {
  const rounded = (areaM2: number): number => Number(areaM2.toPrecision(3));
  const dragAreaM2: ProjectRanged = { best: rounded(best), low: rounded(low), high: rounded(high) };
  return {
    kind: 'measuredArea',
    dragAreaM2,
    provenance: { kind: 'estimate', source: `${why}: ${noSource}` },
    pullTest: null,
  };
}

function section(chordM: number, thicknessM: number, ends: Ends) {
  const chord = estimated(chordM);
  const thickness = estimated(Math.min(thicknessM, chord.m));
  return { chord, thickness, direction: noseForward, coefficient: null, friction: 'model', ends } as const;
}

/** An oval with its nose forward. */
export function oval(chordM: number, thicknessM: number, ends: Ends): ProjectShape {
  return { kind: 'ellipticalBar', ...section(chordM, thicknessM, ends) };
}

/** A box with corners rounded to a fifth of its thickness, its chord forward (up, on a member that lies fore and aft). */
export function boxBar(chordM: number, thicknessM: number, ends: Ends): ProjectShape {
  const sides = section(chordM, thicknessM, ends);
  return { kind: 'rectangularBar', ...sides, cornerRadiusM: Math.round(0.2e4 * sides.thickness.m) / 1e4 };
}

const twineM = 0.002;

/** A net that faces abeam, of 2 mm twine. */
export function sideNet(widthM: number, heightM: number, solidity: number): ProjectShape {
  return {
    kind: 'net',
    facing: 'y',
    width: estimated(widthM),
    height: estimated(heightM),
    solidity,
    wireDiameter: estimated(twineM),
  };
}

/** The edge and sag of a lying net as a drag area: threads square to the wind at a rope's coefficient, half to one and a half times. */
export function netEdge(areaM2: number, solidity: number, why: string): ProjectShape {
  const best = 1.2 * solidity * areaM2;
  return dragArea(
    [best, 0.5 * best, 1.5 * best],
    `${why}, solidity ${solidity}, its threads at a coefficient of 1.2`,
  );
}

/** A drum on a plane. */
export const drum: BodyCoefficients = {
  x: [0.7, 0.5, 0.9],
  y: [0.7, 0.5, 0.9],
  why: 'Short cylinder on a plane',
};

export const roundedBox: BodyCoefficients = { x: [0.85, 0.65, 1.1], y: [0.8, 0.6, 1.05], why: 'Rounded box' };

export const seated: BodyCoefficients = {
  x: [0.9, 0.75, 1.1],
  y: [0.95, 0.8, 1.15],
  why: 'Seated person in foul-weather gear',
};

export const standing: BodyCoefficients = {
  x: [1, 0.85, 1.2],
  y: [0.95, 0.8, 1.15],
  why: 'Standing person in foul-weather gear',
};

export const clothBundle: BodyCoefficients = {
  x: [1.1, 0.9, 1.3],
  y: [1.0, 0.8, 1.2],
  why: 'Box, raised for loose cloth',
};

/** A thin plate of cloth or solar cells lying flat: edge on from ahead and from the side, square on from above. */
export const flatPlate: BodyCoefficients = {
  x: [1.2, 0.8, 1.6],
  y: [1.2, 0.8, 1.6],
  z: [0.6, 0.3, 1.2],
  why: 'Flat plate nearly along the wind',
};
