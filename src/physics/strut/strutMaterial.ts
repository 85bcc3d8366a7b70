import type { SourceId } from '../sources';

/** What a strut is made of. The modulus is along the member, with its 90 % range. */
export interface StrutMaterial {
  readonly modulusPa: number;
  readonly modulusLowPa: number;
  readonly modulusHighPa: number;
  readonly densityKgM3: number;
  /** Stress at which the wall yields in compression; null where the laminate decides. */
  readonly yieldStressPa: number | null;
  readonly source: SourceId;
}

const GPa = 1e9;
const MPa = 1e6;
/** 90 % half-width of a metal's modulus. Assumed. */
const metalDoubt = 0.03;

/**
 * Presets. Metals: modulus and density as the design codes give them, yield of the weaker
 * of the usual tempers. Carbon: a tube with most of its fibres along it, whose modulus depends on fibre and lay-up far
 * more than any metal's. All from memory or common practice: a designer types the supplier's figures instead.
 */
export const strutMaterials = {
  aluminium6082: metal(70 * GPa, 2700, 250 * MPa, 'en-1999-1-1'),
  stainless316: metal(200 * GPa, 8000, 220 * MPa, 'en-1993-1-4'),
  titanium6al4v: metal(114 * GPa, 4430, 830 * MPa, 'titanium-handbooks'),
  carbonEpoxy: {
    modulusPa: 90 * GPa,
    modulusLowPa: 60 * GPa,
    modulusHighPa: 130 * GPa,
    densityKgM3: 1550,
    yieldStressPa: null,
    source: 'carbon-tubes',
  },
} as const satisfies Readonly<Record<string, StrutMaterial>>;

function metal(
  modulusPa: number,
  densityKgM3: number,
  yieldStressPa: number,
  source: SourceId,
): StrutMaterial {
  return {
    modulusPa,
    modulusLowPa: modulusPa * (1 - metalDoubt),
    modulusHighPa: modulusPa * (1 + metalDoubt),
    densityKgM3,
    yieldStressPa,
    source,
  };
}
