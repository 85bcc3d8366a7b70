import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { replaceTube } from '../../src/physics/strut/replaceTube';
import { thicknessOf, type SectionOutline } from '../../src/physics/strut/sectionOutline';
import { strutOf, type StrutInput, type StrutTrace } from '../../src/physics/strut/strut';
import { strutMaterials } from '../../src/physics/strut/strutMaterial';
import { between } from './arbitraries';

const outlines: fc.Arbitrary<SectionOutline> = fc.oneof(
  between(0.01, 0.3).map((diameterM): SectionOutline => ({ kind: 'round', diameterM })),
  fc
    .tuple(between(0.02, 0.5), between(0.08, 1))
    .map(([chordM, ratio]): SectionOutline => ({ kind: 'ellipse', chordM, thicknessM: chordM * ratio })),
  fc
    .tuple(between(0.02, 0.5), between(0.08, 0.5))
    .map(([chordM, ratio]): SectionOutline => ({ kind: 'fairing', chordM, thicknessM: chordM * ratio })),
);
const materials = fc.constantFrom(...Object.values(strutMaterials));
/** Share of half the thickness. */
const walls = between(0.005, 1);

const struts: fc.Arbitrary<StrutInput> = fc
  .record({ outline: outlines, share: walls, lengthM: between(0.2, 10), material: materials })
  .map(({ share, ...rest }) => ({ ...rest, wallM: (share * thicknessOf(rest.outline)) / 2 }));

function traceOf(input: StrutInput): StrutTrace {
  const result = strutOf(input);
  if (result.kind === 'problem') throw new Error(result.problem);
  return result.trace;
}

describe('a strut', () => {
  it('never carries more, nor weighs more, with a thinner wall', () => {
    fc.assert(
      fc.property(struts, between(0.01, 1), (input, share) => {
        const [thick, thin] = [traceOf(input), traceOf({ ...input, wallM: input.wallM * share })];
        // Hole and outline are differences of sums: a part in 1e9 of the solid is rounding.
        const rounding = 1e-9;
        const solid = traceOf({ ...input, wallM: thicknessOf(input.outline) / 2 });
        expect(thin.eulerLoadN).toBeLessThanOrEqual(thick.eulerLoadN + rounding * solid.eulerLoadN);
        expect(thin.upperBoundN).toBeLessThanOrEqual(thick.upperBoundN + rounding * solid.eulerLoadN);
        expect(thin.massKg).toBeLessThanOrEqual(thick.massKg + rounding * solid.massKg);
      }),
    );
  });

  it('of elliptical section with equal axes is the tube in everything', () => {
    fc.assert(
      fc.property(struts, between(0.01, 0.3), walls, (input, diameterM, share) => {
        const wallM = (share * diameterM) / 2;
        const tube = strutOf({ ...input, wallM, outline: { kind: 'round', diameterM } });
        const same = strutOf({
          ...input,
          wallM,
          outline: { kind: 'ellipse', chordM: diameterM, thicknessM: diameterM },
        });
        expect(same).toEqual(tube);
      }),
    );
  });

  it('carries a quarter at twice the length, and sixteen times at twice the section', () => {
    fc.assert(
      fc.property(struts, (input) => {
        const once = traceOf(input);
        const longer = traceOf({ ...input, lengthM: 2 * input.lengthM });
        expect(longer.eulerLoadN / once.eulerLoadN).toBeCloseTo(0.25, 10);
        const { outline } = input;
        const twice: SectionOutline =
          outline.kind === 'round'
            ? { ...outline, diameterM: 2 * outline.diameterM }
            : { ...outline, chordM: 2 * outline.chordM, thicknessM: 2 * outline.thicknessM };
        const larger = traceOf({ ...input, outline: twice, wallM: 2 * input.wallM });
        expect(larger.eulerLoadN / once.eulerLoadN).toBeCloseTo(16, 5);
        expect(larger.massKg / once.massKg).toBeCloseTo(4, 6);
      }),
    );
  });

  it('stays finite and above nothing, its weak axis no stronger than either of the section’s own', () => {
    fc.assert(
      fc.property(struts, (input) => {
        const trace = traceOf(input);
        for (const [key, value] of Object.entries(trace) as [string, number | null][]) {
          expect(Number.isFinite(value ?? 0), key).toBe(true);
        }
        expect(trace.weakM4).toBeGreaterThan(0);
        // The weak one is a difference of the two: a part in 1e9 is rounding.
        const weaker = Math.min(trace.aboutChordM4, trace.acrossChordM4);
        expect(trace.weakM4).toBeLessThanOrEqual(weaker * (1 + 1e-9));
        expect(trace.weakM4).toBeGreaterThanOrEqual(weaker * (1 - 1e-9));
        expect(trace.areaM2).toBeLessThanOrEqual(trace.enclosedAreaM2 * (1 + 1e-12));
        expect(trace.upperBoundN).toBeLessThanOrEqual(trace.eulerLoadN);
        expect(Math.abs(trace.productM4)).toBeLessThan(1e-9 * trace.acrossChordM4);
      }),
    );
  });

  it('in a tube’s place carries what the tube carried, and not with a thinner wall', () => {
    fc.assert(
      fc.property(struts, outlines, materials, (tube, outline, material) => {
        const result = replaceTube(tube, { outline, material });
        fc.pre(result.kind === 'replacement');
        const { section } = result;
        // A wall of less than a ten-thousandth of a section stands in no tube, and is lost in rounding.
        fc.pre(section.wallM > 1e-4 * section.thicknessM);
        expect(section.upperBoundN).toBeGreaterThanOrEqual(result.tube.upperBoundN);
        const thinner = traceOf({ outline, material, lengthM: tube.lengthM, wallM: 0.999 * section.wallM });
        expect(thinner.upperBoundN).toBeLessThan(result.tube.upperBoundN);
      }),
      { numRuns: 60 },
    );
  });

  it('has Euler’s load of its weak axis, its ends by the modulus, and the least of that and what yields', () => {
    fc.assert(
      fc.property(struts, (input) => {
        const trace = traceOf(input);
        const { modulusPa, modulusLowPa, modulusHighPa, yieldStressPa, densityKgM3 } = input.material;
        const euler = (modulus: number): number =>
          (modulus * trace.weakM4 * Math.PI ** 2) / input.lengthM ** 2;
        expect(trace.eulerLoadN / euler(modulusPa)).toBeCloseTo(1, 12);
        expect(trace.eulerLoadLowN / euler(modulusLowPa)).toBeCloseTo(1, 12);
        expect(trace.eulerLoadHighN / euler(modulusHighPa)).toBeCloseTo(1, 12);
        const yields = yieldStressPa === null ? Infinity : yieldStressPa * trace.areaM2;
        expect(trace.upperBoundN).toBe(Math.min(trace.eulerLoadN, yields));
        // E pi^2 / slenderness^2 is Euler's stress.
        const stress = (modulusPa * Math.PI ** 2) / trace.slenderness ** 2;
        expect(trace.eulerStressPa / stress).toBeCloseTo(1, 9);
        expect((trace.gyrationRadiusM ** 2 * trace.areaM2) / trace.weakM4).toBeCloseTo(1, 12);
        expect(trace.massKg / (densityKgM3 * trace.areaM2 * input.lengthM)).toBeCloseTo(1, 12);
        expect(trace.bendingStiffnessNm2).toBe(modulusPa * trace.weakM4);
      }),
    );
  });

  it('is warned of a wall under a fiftieth of its mean diameter, or of its flattest part’s where that is a fifth more', () => {
    fc.assert(
      fc.property(struts, (input) => {
        const result = strutOf(input);
        if (result.kind === 'problem') throw new Error(result.problem);
        const { wallM, perimeterM, flattestRadiusM, yieldLoadN, eulerLoadN } = result.trace;
        const meanM = perimeterM / Math.PI;
        const flatM = 2 * flattestRadiusM;
        const codes = result.notices.map(({ code }) => code);
        expect(codes[0]).toBe('load-is-upper-bound');
        expect(codes.includes('thin-wall')).toBe(50 * wallM < meanM);
        expect(codes.includes('flat-sides')).toBe(5 * flatM > 6 * meanM && 50 * wallM < flatM);
        expect(codes.includes('yield-not-known')).toBe(yieldLoadN === null);
        expect(codes.includes('yields-first')).toBe((yieldLoadN ?? Infinity) < eulerLoadN);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('materials, written a second time', () => {
  it('metals are doubted by 3 % in their modulus; carbon is 60 to 130 GPa, best 90, and 1550 kg/m3', () => {
    const { aluminium6082, stainless316, titanium6al4v, carbonEpoxy } = strutMaterials;
    for (const metal of [aluminium6082, stainless316, titanium6al4v]) {
      expect(metal.modulusLowPa / metal.modulusPa).toBeCloseTo(0.97, 12);
      expect(metal.modulusHighPa / metal.modulusPa).toBeCloseTo(1.03, 12);
    }
    expect(carbonEpoxy).toMatchObject({
      modulusPa: 9e10,
      modulusLowPa: 6e10,
      modulusHighPa: 1.3e11,
      densityKgM3: 1550,
    });
  });
});
