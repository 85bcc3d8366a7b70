import { namedBodies, type NamedBodyId } from '../../physics/body/namedBodies';
import type { WireConstruction } from '../../physics/section/wire';
import type { EnvelopeShapeId } from './envelopeTexts';

/** How a shape's area follows from its sizes. */
export type AreaRule = 'widthTimesLength' | 'disc' | 'square' | 'typed';

/** Which coefficients a shape has. */
export type ShapeFamily =
  | { readonly kind: 'roundBar' | 'sphere' | 'plate' | 'rectangularBar' }
  | { readonly kind: 'wire'; readonly construction: WireConstruction }
  | { readonly kind: 'named'; readonly id: NamedBodyId };

export interface ShapeFacts {
  readonly area: AreaRule;
  readonly family: ShapeFamily;
  /** The area that coefficients are based on, in words. */
  readonly areaBase: string;
}

const across = 'width across the wind × length';

function wire(construction: WireConstruction): ShapeFacts {
  return { area: 'widthTimesLength', family: { kind: 'wire', construction }, areaBase: 'diameter × length' };
}

function named(id: NamedBodyId, area: AreaRule): ShapeFacts {
  return { area, family: { kind: 'named', id }, areaBase: namedBodies[id].areaBase.replace(' x ', ' × ') };
}

/** What is known of each shape that can be chosen. */
export const shapeFacts: Readonly<Record<EnvelopeShapeId, ShapeFacts>> = {
  roundBar: { area: 'widthTimesLength', family: { kind: 'roundBar' }, areaBase: 'diameter × length' },
  rod: wire('rod'),
  spiralStrand: wire('spiralStrand'),
  strandedWire: wire('strandedWire'),
  braidedRope: wire('braidedRope'),
  sphere: { area: 'disc', family: { kind: 'sphere' }, areaBase: 'frontal area' },
  plate: { area: 'widthTimesLength', family: { kind: 'plate' }, areaBase: across },
  rectangularBar: { area: 'widthTimesLength', family: { kind: 'rectangularBar' }, areaBase: across },
  cubeFace: named('cubeFace', 'square'),
  cubeCorner: named('cubeCorner', 'typed'),
  disc: named('disc', 'disc'),
  squarePlate: named('squarePlate', 'square'),
  squareBarCorner: named('squareBarCorner', 'widthTimesLength'),
  squareBarRounded: named('squareBarRounded', 'widthTimesLength'),
  hexagonBarFlat: named('hexagonBarFlat', 'widthTimesLength'),
  hexagonBarCorner: named('hexagonBarCorner', 'widthTimesLength'),
  halfTubeRoundFront: named('halfTubeRoundFront', 'widthTimesLength'),
  halfTubeOpenFront: named('halfTubeOpenFront', 'widthTimesLength'),
  cone60: named('cone60', 'disc'),
  cone30: named('cone30', 'disc'),
  solidHemisphereRoundFront: named('solidHemisphereRoundFront', 'disc'),
  solidHemisphereFlatFront: named('solidHemisphereFlatFront', 'disc'),
  hollowHemisphereRoundFront: named('hollowHemisphereRoundFront', 'disc'),
  hollowHemisphereOpenFront: named('hollowHemisphereOpenFront', 'disc'),
};

/** Of an unnamed shape: width times length. */
export function areaRuleOf(shape: EnvelopeShapeId | null): AreaRule {
  return shape === null ? 'widthTimesLength' : shapeFacts[shape].area;
}
