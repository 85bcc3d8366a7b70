import type { Ranged } from '../../physics/fitting/fittingInput';
import type { Unit } from '../../units/unitTable';
import type { EnvelopeFieldId } from './envelopeTexts';

/** One line of the sum, worked again from what was written. */
export interface EnvelopeStep {
  readonly id: EnvelopeStepId;
  /** "Force". */
  readonly label: string;
  /** "F = q · Cd · A = 86.4 Pa · 0.60 · 0.280 m² = 14.5 N": with the numbers in it. */
  readonly formula: string;
  /** What was written for it, or null. */
  readonly givenSi: number | null;
  /** What the other numbers give, or null when they do not reach. */
  readonly computedSi: number | null;
  /** Where the last written digits leave the computed value. */
  readonly computedLowSi: number | null;
  readonly computedHighSi: number | null;
  /** Null when there is nothing to compare. */
  readonly agrees: boolean | null;
  /** The unit to print it in: as it was typed, or the usual one. */
  readonly unit: Unit;
  /** The field that was written, or could be. */
  readonly fieldId: EnvelopeFieldId | null;
}

export type EnvelopeStepId =
  | 'apparentSpeed'
  | 'pressure'
  | 'area'
  | 'dragArea'
  | 'coefficient'
  | 'reynolds'
  | 'force'
  | 'power'
  | 'horsepower'
  | 'trackPower';

/** A written number that the others do not give. */
export interface EnvelopeMismatch {
  readonly fieldId: EnvelopeFieldId;
  readonly fromFieldIds: readonly EnvelopeFieldId[];
  readonly givenSi: number;
  readonly computedSi: number;
  readonly unit: Unit;
  /** "170 W does not follow: 14.5 N at 12.0 m/s is 174 W." */
  readonly sentence: string;
}

export const envelopeSlipIds = [
  'knotsForMs',
  'kmhForMs',
  'diameterForRadius',
  'radiusForDiameter',
  'otherHorsepower',
  'wettedArea',
  'chordArea',
  'trueForApparent',
  'airForTrack',
  'trackForAir',
  'countForgotten',
  'halfForgotten',
  'millimetresAsCentimetres',
] as const;
export type EnvelopeSlipId = (typeof envelopeSlipIds)[number];

/** The written numbers with this ONE thing changed give the claim, and do not without it. */
export interface EnvelopeSlip {
  readonly id: EnvelopeSlipId;
  /** "knots taken for m/s". */
  readonly label: string;
  /** The claims that it explains. */
  readonly explains: readonly EnvelopeFieldId[];
  readonly sentence: string;
}

/** What a handbook uses for this shape in this wind. Ranges are the ledger's 90 %. */
export interface EnvelopeHandbook {
  readonly shapeLabel: string;
  /** Null where no width is written and the coefficient does not ask for one. */
  readonly reynolds: number | null;
  readonly regime: string | null;
  /** Infinitely long, on the named area. */
  readonly sectionCoefficient: Ranged;
  /** Factors of finite length; null for shapes that have none. */
  readonly endFactorDnv: number | null;
  readonly endFactorEn: number | null;
  /** What to use: the two together, on the named area, with the spread of both. */
  readonly coefficient: Ranged;
  readonly areaBase: string;
  readonly areaM2: number;
  readonly forceN: Ranged;
  readonly airPowerW: Ranged;
  /** Written coefficient, force and power over the handbook's best; null where nothing was written. */
  readonly coefficientRatio: number | null;
  readonly forceRatio: number | null;
  readonly powerRatio: number | null;
  /** The verdict: "Cd 0.50 is low by about two (0.95, 0.85–1.10)". Null where nothing was written to compare. */
  readonly verdict: EnvelopeVerdict | null;
  /** Complete sentences, in order: coefficient, ends, answer. */
  readonly sentences: readonly string[];
  /** Outside a table's range, named. */
  readonly notices: readonly string[];
  /** Titles of the sources. */
  readonly sources: readonly string[];
}

export interface EnvelopeVerdict {
  readonly kind: 'within' | 'low' | 'high';
  readonly sentence: string;
}

export interface EnvelopeSpeedRow {
  readonly speedMs: number;
  /** True for the speed as written. */
  readonly isGiven: boolean;
  readonly reynolds: number | null;
  readonly handbookCoefficient: number | null;
  readonly handbookForceN: Ranged | null;
  readonly handbookAirPowerW: Ranged | null;
  readonly envelopeForceN: number | null;
  readonly envelopeAirPowerW: number | null;
}

export interface EnvelopeSpeedTable {
  readonly title: string;
  readonly speedUnit: Unit;
  readonly rows: readonly EnvelopeSpeedRow[];
}

/** Air power against track power. */
export interface EnvelopeTrack {
  readonly apparentSpeedMs: number;
  /** From the course. */
  readonly apparentAngleRad: number;
  readonly boatSpeedMs: number;
  /** With the handbook's coefficient, or without a shape the envelope's own (no range then). */
  readonly basis: 'handbook' | 'envelope';
  readonly airPowerW: Ranged;
  /** Negative when the wind pushes. */
  readonly trackPowerW: Ranged;
  readonly formula: string;
  readonly sentences: readonly string[];
}

export interface EnvelopeCheck {
  /** How the envelope's own numbers stand; the handbook's verdict on the coefficient stands beside it. */
  readonly summary: string;
  /** What was taken because it was not written, each a sentence. */
  readonly assumptions: readonly string[];
  readonly steps: readonly EnvelopeStep[];
  readonly mismatches: readonly EnvelopeMismatch[];
  /** One: named; several: "one of". */
  readonly slips: readonly EnvelopeSlip[];
  /** "One of these fits:", or "This fits:"; null without slips. */
  readonly slipLead: string | null;
  readonly handbook: EnvelopeHandbook | null;
  /** Why there is no handbook's answer: what to type. */
  readonly handbookMissing: string | null;
  readonly speedTable: EnvelopeSpeedTable | null;
  readonly track: EnvelopeTrack | null;
  readonly trackMissing: string | null;
}
