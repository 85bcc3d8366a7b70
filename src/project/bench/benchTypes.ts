import type { Tack } from '../../physics/frames/boatToTrack';
import type { StrutTrace } from '../../physics/strut/strut';
import type { TurningTrace } from '../../physics/strut/turningFairing';
import type { BeamEnds } from '../../physics/vibration/naturalFrequency';
import type { VibrationTrace } from '../../physics/vibration/vibration';
import type { ThicknessRow } from '../../physics/section/thicknessCurve';
import type { FlatNeighbourhood } from '../../physics/numerics/flatNeighbourhood';
import type { ProjectFitting } from '../file/schema';
import type { LedgerBasis } from '../ledger/ledgerTypes';
import type { Candidate, CandidateKind, CandidateMaterial } from './candidates';

/** What a member or a difference is paid in: sweeps and crossings are told in these. */
export type Currency = 'dragAlongWindN' | 'trackPowerW' | 'sideForceN' | 'fullPriceW';

/** What the table compares: the currencies and the heeling moment. */
export type BenchMeasure = Currency | 'heelingMomentNm';

export const currencies: readonly {
  readonly id: Currency;
  readonly label: string;
  readonly unit: 'N' | 'W';
}[] = [
  { id: 'dragAlongWindN', label: 'drag along the wind', unit: 'N' },
  { id: 'trackPowerW', label: 'track power', unit: 'W' },
  { id: 'sideForceN', label: 'side force', unit: 'N' },
  { id: 'fullPriceW', label: 'full price', unit: 'W' },
];

export const benchMeasures: readonly {
  readonly id: BenchMeasure;
  readonly label: string;
  readonly unit: 'N' | 'W' | 'N m';
}[] = [...currencies, { id: 'heelingMomentNm', label: 'heeling moment', unit: 'N m' }];

/** A best value with its 90 % range. */
export interface Ranged {
  readonly best: number;
  readonly low: number;
  readonly high: number;
}

export type Measures = Readonly<Record<BenchMeasure, Ranged>>;

/** What is put on the bench: a bar of the ledger, or a typed one that no file holds. */
export interface BenchMember {
  readonly fitting: ProjectFitting;
  readonly isTyped: boolean;
}

export interface TypedMember {
  readonly diameterM: number;
  readonly lengthM: number;
  readonly footAboveDeckM: number;
  readonly leanAftDeg: number;
  readonly leanOutDeg: number;
  readonly ends: readonly ['free' | 'surface' | 'joined', 'free' | 'surface' | 'joined'];
}

export interface CandidateMass {
  /** Of the finished part, all members of a row or pair together; null where nothing gives it. */
  readonly massKg: number | null;
  /** Against the bare member; of a fairing round the tube that is the fairing. */
  readonly changeKg: number | null;
  /** What the mass comes from, in words. */
  readonly from: string;
}

export interface BenchConditionRow {
  readonly conditionId: string;
  readonly name: string;
  /** Share of the hours. */
  readonly weight: number;
  readonly values: Measures;
  /** Bare less candidate: positive saves. */
  readonly saving: Measures;
}

export interface BenchRow {
  readonly candidateId: string;
  readonly name: string;
  readonly kind: CandidateKind;
  readonly fitting: ProjectFitting;
  /** On the basis asked for. */
  readonly values: Measures;
  /** Bare less candidate, its range source by source: positive saves. */
  readonly saving: Measures;
  /** True where the range of the saving excludes zero. */
  readonly isSure: Readonly<Record<BenchMeasure, boolean>>;
  readonly mass: CandidateMass;
  /** Every condition of the course profile; empty without one. */
  readonly perCondition: readonly BenchConditionRow[];
  /** Over the course profile; null without one. */
  readonly weighted: { readonly values: Measures; readonly saving: Measures } | null;
  /**
   * Where it wins and where it loses, and on the whole, in full price where a price is given and in track power otherwise;
   * null of the bare member or without a profile.
   */
  readonly words: string | null;
  /** Sentences on what limits the numbers. */
  readonly notices: readonly string[];
}

export interface BenchComparison {
  readonly basis: LedgerBasis;
  /** In the order of the candidates; one with a problem has no row. */
  readonly rows: readonly BenchRow[];
  /** True when a condition of the basis gives a price: otherwise full price is track power. */
  readonly hasFullPrice: boolean;
}

export type ComparisonAnswer =
  | { readonly ok: true; readonly comparison: BenchComparison }
  | { readonly ok: false; readonly message: string };

/** What is swept; the rest of the condition is held as `BenchSweep.held` says. */
export type SweepOver = 'apparentAngle' | 'apparentSpeed' | 'boatSpeed';

export interface SweepQuestion {
  readonly conditionId: string;
  readonly over: SweepOver;
  readonly tack: Tack;
}

/** As long as `BenchSweep.xs`. */
export interface Band {
  readonly best: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** One doubt's changes along a sweep, so that a difference of two sweeps cancels what they share. */
export interface SweepDoubt {
  readonly id: string;
  readonly up: Readonly<Record<Currency, Float64Array>>;
  readonly down: Readonly<Record<Currency, Float64Array>>;
}

export interface BenchSweep {
  readonly question: SweepQuestion;
  /** rad for angles (181 from 0 to pi), m/s for speeds; rising. */
  readonly xs: Float64Array;
  /** Where the condition stands; null on the other tack. */
  readonly presentAt: number | null;
  /** What is held, in words with numbers in the reader's units. */
  readonly held: () => string;
  readonly bands: Readonly<Record<Currency, Band>>;
  readonly doubts: readonly SweepDoubt[];
}

export type SweepAnswer =
  { readonly ok: true; readonly sweep: BenchSweep } | { readonly ok: false; readonly message: string };

export interface BenchCrossing {
  /** rad or m/s, as the sweep's xs. */
  readonly at: number;
  /** The stretch on which the doubts leave the winner open. */
  readonly from: number;
  readonly to: number;
  /** Where the candidate is the cheaper one. */
  readonly winsBelow: boolean;
  /** "drag along the wind: 17.2°; below it the fairing wins". */
  readonly text: string;
}

export interface CurrencyCrossings {
  readonly currency: Currency;
  readonly crossings: readonly BenchCrossing[];
  /** One sentence; says so when there is none, and who wins all along. */
  readonly text: string;
}

export type ThicknessCurveAnswer =
  | {
      readonly ok: true;
      readonly rows: readonly ThicknessRow[];
      readonly flat: FlatNeighbourhood;
      /** "Within 5 % of the least drag from 0.20 to 0.33": never a point. */
      readonly flatText: string;
      readonly presentRatio: number | null;
      readonly notices: readonly string[];
    }
  | { readonly ok: false; readonly message: string };

/** The tube that carries now; its outer diameter is the member's. */
export interface CarryingTube {
  readonly material: CandidateMaterial;
  readonly wallM: number;
}

/** A wire by what it is set up to, instead of a wall. */
export interface TautWire {
  readonly tensionN: number;
  readonly massPerLengthKgM: number;
}

export type StrutAnswer =
  | {
      readonly ok: true;
      readonly tube: StrutTrace;
      /** The section with the wall that carries the tube's load; null of a candidate that leaves the tube standing. */
      readonly needed: StrutTrace | null;
      /** The section with the wall that was typed; null where none was. */
      readonly typed: StrutTrace | null;
      /** One sentence: does it carry the load? */
      readonly verdict: string;
      readonly notices: readonly string[];
    }
  | { readonly ok: false; readonly message: string };

/** Both holdings of the ends, since nobody knows which is nearer. */
export interface VibrationCase {
  readonly ends: BeamEnds;
  readonly label: string;
  readonly trace: VibrationTrace;
  readonly notices: readonly string[];
}

export type VibrationAnswer =
  | {
      readonly ok: true;
      readonly cases: readonly VibrationCase[];
      /** Shedding over the speeds, for a chart. */
      readonly shedding: readonly {
        readonly crossSpeedMs: number;
        readonly sheddingHz: number;
        readonly sheddingLowHz: number;
        readonly sheddingHighHz: number;
      }[];
    }
  /** Also of faired sections, for which no shedding frequency is known: the message says so. */
  | { readonly ok: false; readonly message: string };

export interface TurningSetting {
  /** Share of the chord, from the nose. */
  readonly pivotShare: number;
  /** Share of the chord; null: that of the skin. */
  readonly massCentreShare: number | null;
  readonly endClearanceM: number;
}

export type TurningAnswer =
  | { readonly ok: true; readonly trace: TurningTrace; readonly notices: readonly string[] }
  | { readonly ok: false; readonly message: string };

export interface UseCandidate {
  readonly member: BenchMember;
  readonly candidate: Candidate;
  /** null makes a new plan. */
  readonly planId: string | null;
  readonly basis: LedgerBasis;
}

/** What an address holds of the bench. */
export interface BenchSetting {
  readonly memberId: string | null;
  /** The typed member that stands on the bench instead of one of the ledger. */
  readonly typed: TypedMember | null;
  readonly candidates: readonly Candidate[];
}
