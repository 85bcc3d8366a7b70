import { newName } from '../../project/edit/names';
import { blankFitting, roundBar } from '../../project/file/blankParts';
import type { Project, ProjectFitting, ProjectPlacement, ProjectShape } from '../../project/file/schema';

/** A fitting with nothing known of it yet but its kind. */
export interface Blank {
  readonly name: string;
  readonly shape: ProjectShape;
  /** How far its place reaches up, m; a body and an area stand at a point. */
  readonly lengthM: number;
  /** Foot of a bar, middle of a body or an area, above the deck, m. */
  readonly aboveDeckM: number;
}

function side(m: number) {
  return { m, basis: 'estimated' } as const;
}

/** Round sizes that nobody takes for measured ones: to be typed over at once. */
export const blanks: readonly Blank[] = [
  {
    name: 'New bar',
    shape: { ...roundBar(0.025), diameter: side(0.025) } as ProjectShape,
    lengthM: 1,
    aboveDeckM: 0,
  },
  {
    name: 'New body',
    shape: {
      kind: 'bluffBody',
      length: side(0.5),
      width: side(0.5),
      height: side(0.5),
      cornerRadiusM: 0,
      coefficients: { x: null, y: null, z: null },
    },
    lengthM: 0,
    aboveDeckM: 0.25,
  },
  {
    name: 'New measured area',
    shape: {
      kind: 'measuredArea',
      dragAreaM2: { best: 0.1, low: 0.05, high: 0.15 },
      provenance: { kind: 'estimate', source: '' },
      pullTest: null,
    },
    lengthM: 0,
    aboveDeckM: 0.25,
  },
];

/** The fitting, upright on the centreline amidships, with a name of its own. */
export function fittingFromBlank(
  { name, shape, lengthM, aboveDeckM }: Blank,
  { boat, fittings }: Project,
  zoneId: string,
): ProjectFitting {
  const placement: ProjectPlacement = {
    kind: 'taped',
    aftOfStemM: boat.lengthM / 2,
    side: 'centreline',
    athwart: { from: 'centreline', inboardOrOutM: 0 },
    aboveDeckM,
    lengthM,
    leanAftDeg: 0,
    leanOutDeg: 0,
    basis: 'estimated',
    row: null,
    pair: false,
  };
  const names = fittings.map((fitting) => fitting.name);
  return blankFitting({ id: 'new', name: newName(name, names), zoneId, shape, placement });
}
