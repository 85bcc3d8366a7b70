import fc from 'fast-check';
import type { EnvelopeTexts } from '../../src/project/envelope/envelopeTexts';

/** Rounds as people write: 0.50 and 1.0 with their zeros, 11000 without a power of ten. */
function written(value: number, figures: number): string {
  const text = value.toPrecision(figures);
  return text.includes('e') ? String(Number(text)) : text;
}

/** Written again here: 1 kn is 1852 m an hour. */
const perMs = { 'm/s': 1, kn: 1852 / 3600, 'km/h': 1 / 3.6 } as const;
/** 550 ft lbf/s, and 75 kgf m/s. */
export const wattsOf = { hp: 550 * 0.3048 * 4.4482216152605, PS: 75 * 9.80665 } as const;

/** The numbers behind an estimate, as its author had them. */
export interface Estimate {
  /** In `speedUnit`; the sum is done in m/s, by a factor of the author's own. */
  readonly speed: number;
  readonly speedUnit: keyof typeof perMs;
  /** Which horsepower the author writes beside the watts, if any. */
  readonly horsepower: keyof typeof wattsOf | null;
  readonly densityKgM3: number;
  readonly count: number;
  readonly widthM: number;
  readonly lengthM: number;
  readonly coefficient: number;
  readonly figures: readonly [area: number, force: number, power: number];
  /** Whether the author went on with the rounded number. */
  readonly wentOnRounded: boolean;
  readonly shown: { readonly area: boolean; readonly force: boolean; readonly density: boolean };
}

const rounded = (from: number, to: number, step: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: Math.round(from / step), max: Math.round(to / step) })
    .map((n) => Number((n * step).toFixed(6)));

const figures = fc.integer({ min: 2, max: 3 });

export const estimates: fc.Arbitrary<Estimate> = fc.record({
  speed: rounded(3, 40, 0.5),
  speedUnit: fc.constantFrom('m/s', 'kn', 'km/h'),
  horsepower: fc.constantFrom('hp', 'PS', null),
  densityKgM3: fc.constantFrom(1.2, 1.225, 1.23),
  count: fc.integer({ min: 1, max: 30 }),
  widthM: rounded(0.003, 0.3, 0.001),
  lengthM: rounded(0.3, 20, 0.1),
  coefficient: rounded(0.05, 2, 0.05),
  figures: fc.tuple(figures, figures, figures),
  wentOnRounded: fc.boolean(),
  shown: fc.record({ area: fc.boolean(), force: fc.boolean(), density: fc.boolean() }),
});

/** What the author's sums give, with the numbers that the sum was done with. */
export interface Sums {
  readonly areaM2: number;
  readonly forceN: number;
  readonly powerW: number;
}

/** A wrong step in the sum; 1 is none. */
export interface Wrong {
  readonly speed?: number;
  readonly area?: number;
  readonly pressure?: number;
}

export function sumsOf(estimate: Estimate, { speed = 1, area = 1, pressure = 1 }: Wrong = {}): Sums {
  const { densityKgM3, count, widthM, lengthM, coefficient, wentOnRounded } = estimate;
  const [areaFigures, forceFigures] = estimate.figures;
  const keep = (value: number, to: number): number => (wentOnRounded ? Number(value.toPrecision(to)) : value);
  const v = estimate.speed * perMs[estimate.speedUnit] * speed;
  const areaM2 = keep(area * count * widthM * lengthM, areaFigures);
  const forceN = keep(((pressure * densityKgM3) / 2) * v * v * coefficient * areaM2, forceFigures);
  return { areaM2, forceN, powerW: forceN * v };
}

/** The fields as the author writes them. Where the sum went on with rounded numbers, those are written. */
export function textsOf(estimate: Estimate, sums: Sums): EnvelopeTexts {
  const { shown, wentOnRounded, horsepower } = estimate;
  const [areaFigures, forceFigures, powerFigures] = estimate.figures;
  return {
    speed: `${estimate.speed} ${estimate.speedUnit}`,
    count: String(estimate.count),
    width: `${Number((estimate.widthM * 1000).toFixed(3))} mm`,
    length: `${estimate.lengthM} m`,
    coefficient: String(estimate.coefficient),
    power: `${written(sums.powerW, powerFigures)} W`,
    ...(horsepower === null
      ? {}
      : { horsepower: `${written(sums.powerW / wattsOf[horsepower], 3)} ${horsepower}` }),
    ...(shown.density ? { density: `${estimate.densityKgM3} kg/m3` } : {}),
    ...(shown.area || wentOnRounded ? { area: `${written(sums.areaM2, areaFigures)} m2` } : {}),
    ...(shown.force || wentOnRounded ? { force: `${written(sums.forceN, forceFigures)} N` } : {}),
  };
}
