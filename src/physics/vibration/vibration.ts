import type { Quantity } from '../quantity';
import { beamFrequencyHz, wireFrequencyHz, type BeamEnds } from './naturalFrequency';
import { strouhal, strouhalReynoldsRange } from './shedding';

/** A tube by its stiffness and ends, or a wire by its tension. The mass per length is that of all that moves. */
export type VibratingMember =
  | { readonly kind: 'tube'; readonly bendingStiffnessNm2: number; readonly ends: BeamEnds }
  | { readonly kind: 'wire'; readonly tensionN: number };

export interface VibrationInput {
  readonly member: VibratingMember;
  readonly lengthM: number;
  readonly massPerLengthKgM: number;
  /** Diameter that the wind meets. */
  readonly widthM: number;
  /** Least and largest wind square to the axis that the member meets. */
  readonly speedFromMs: number;
  readonly speedToMs: number;
  readonly kinematicViscosityM2S: number;
}

export type VibrationProblem = 'not-a-number' | 'not-positive' | 'speeds-out-of-order';

/**
 * `meets`: the member's own frequency is met within the speeds, from and to are the part of the band that is met.
 * `lock-in-near`: only the wider range in which a member can lock the shedding to itself reaches into the speeds.
 * `irregular`: at the meeting speed the Strouhal number is not known.
 */
export interface VibrationNotice {
  readonly code: 'meets' | 'lock-in-near' | 'irregular';
  readonly values: Readonly<Record<string, number>>;
}

/** The working; stiffness is null of a wire, tension of a tube. */
export interface VibrationTrace {
  readonly lengthM: number;
  readonly massPerLengthKgM: number;
  readonly widthM: number;
  readonly bendingStiffnessNm2: number | null;
  readonly tensionN: number | null;
  readonly speedFromMs: number;
  readonly speedToMs: number;
  readonly firstFrequencyHz: number;
  readonly sheddingFromHz: number;
  readonly sheddingToHz: number;
  readonly meetingSpeedMs: number;
  readonly meetingSpeedLowMs: number;
  readonly meetingSpeedHighMs: number;
  readonly lockInFromMs: number;
  readonly lockInToMs: number;
  readonly reynoldsAtMeeting: number;
}

export type VibrationResult =
  | {
      readonly kind: 'vibration';
      readonly trace: VibrationTrace;
      readonly notices: readonly VibrationNotice[];
    }
  | { readonly kind: 'problem'; readonly problem: VibrationProblem };

/** Reduced velocity u / (f d) within which a member can lock the shedding to itself. Source: dnv-lock-in (from memory). */
const lockIn = { from: 4, to: 8 } as const;

/**
 * At which winds a round member sheds vortices in its own first frequency: u = f_1 d / St, with St 0.2 +- 10 % as the
 * band; lock-in widens it to f_1 d times 4 to 8. A warning, no prediction: amplitude, damping and the drag that lock-in adds are left
 * out, higher modes are met at faster winds. The speeds are those square to the axis.
 *
 * Valid for round bars and wires at Reynolds numbers of 250 to 2e5, of one diameter, in a uniform wind.
 * Example: first frequency 40 Hz, 25 mm: met at 5 m/s, 4.55 to 5.56. Errors: tagged.
 * Source: strouhal-cylinder, thomson-beams, stretched-string, dnv-lock-in.
 */
export function vibrationOf(input: VibrationInput): VibrationResult {
  const problem = vibrationProblem(input);
  if (problem !== null) return { kind: 'problem', problem };
  const trace = traceOf(input);
  return { kind: 'vibration', trace, notices: noticesOf(trace) };
}

function vibrationProblem(input: VibrationInput): VibrationProblem | null {
  const { member, speedFromMs, speedToMs } = input;
  const stiffening = member.kind === 'tube' ? member.bendingStiffnessNm2 : member.tensionN;
  const positive = [
    stiffening,
    input.lengthM,
    input.massPerLengthKgM,
    input.widthM,
    input.kinematicViscosityM2S,
  ];
  if (![...positive, speedFromMs, speedToMs].every(Number.isFinite)) return 'not-a-number';
  if (!positive.every((value) => value > 0) || speedFromMs < 0) return 'not-positive';
  return speedFromMs <= speedToMs ? null : 'speeds-out-of-order';
}

function firstFrequencyHz({ member, massPerLengthKgM, lengthM }: VibrationInput): number {
  return member.kind === 'tube'
    ? beamFrequencyHz(member.bendingStiffnessNm2, massPerLengthKgM, lengthM, member.ends)
    : wireFrequencyHz(member.tensionN, massPerLengthKgM, lengthM);
}

function traceOf(input: VibrationInput): VibrationTrace {
  const { member, kinematicViscosityM2S, ...given } = input;
  const { widthM, speedFromMs, speedToMs } = input;
  const ownHz = firstFrequencyHz(input);
  const speedPerStrouhalMs = ownHz * widthM;
  const meetingSpeedMs = speedPerStrouhalMs / strouhal.best;
  return {
    ...given,
    bendingStiffnessNm2: member.kind === 'tube' ? member.bendingStiffnessNm2 : null,
    tensionN: member.kind === 'wire' ? member.tensionN : null,
    firstFrequencyHz: ownHz,
    sheddingFromHz: (strouhal.low * speedFromMs) / widthM,
    sheddingToHz: (strouhal.high * speedToMs) / widthM,
    meetingSpeedMs,
    meetingSpeedLowMs: speedPerStrouhalMs / strouhal.high,
    meetingSpeedHighMs: speedPerStrouhalMs / strouhal.low,
    lockInFromMs: lockIn.from * speedPerStrouhalMs,
    lockInToMs: lockIn.to * speedPerStrouhalMs,
    reynoldsAtMeeting: (meetingSpeedMs * widthM) / kinematicViscosityM2S,
  };
}

function noticesOf(trace: VibrationTrace): VibrationNotice[] {
  const { meetingSpeedLowMs, meetingSpeedHighMs, lockInFromMs, lockInToMs, reynoldsAtMeeting } = trace;
  const meets = commonRange(trace, meetingSpeedLowMs, meetingSpeedHighMs);
  const near = meets === null ? commonRange(trace, lockInFromMs, lockInToMs) : null;
  const { from, to } = strouhalReynoldsRange;
  const isIrregular = reynoldsAtMeeting < from || reynoldsAtMeeting > to;
  const found: (VibrationNotice | false)[] = [
    meets !== null && { code: 'meets', values: meets },
    near !== null && { code: 'lock-in-near', values: near },
    isIrregular && { code: 'irregular', values: { reynoldsAtMeeting } },
  ];
  return found.filter((notice) => notice !== false);
}

/** What the member's speeds have in common with a band, or null. */
function commonRange(
  { speedFromMs, speedToMs }: VibrationTrace,
  bandFromMs: number,
  bandToMs: number,
): { readonly fromMs: number; readonly toMs: number } | null {
  const [fromMs, toMs] = [Math.max(speedFromMs, bandFromMs), Math.min(speedToMs, bandToMs)];
  return fromMs <= toMs ? { fromMs, toMs } : null;
}

export const vibrationQuantities = {
  lengthM: { symbol: 'L', label: 'length between its ends', unit: 'm' },
  massPerLengthKgM: { symbol: 'm_l', label: 'mass per length of all that moves', unit: 'kg/m' },
  widthM: { symbol: 'd', label: 'diameter', unit: 'm' },
  bendingStiffnessNm2: { symbol: 'B', label: 'bending stiffness', unit: 'N m2', equation: 'E I' },
  tensionN: { symbol: 'T', label: 'tension', unit: 'N' },
  speedFromMs: { symbol: 'u_from', label: 'least wind square to the axis', unit: 'm/s' },
  speedToMs: { symbol: 'u_to', label: 'largest wind square to the axis', unit: 'm/s' },
  firstFrequencyHz: {
    symbol: 'f_1',
    label: "the member's own first frequency",
    unit: 'Hz',
    equation: 'k sqrt(B / m_l) / (2 pi L^2), or sqrt(T / m_l) / (2 L)',
    source: 'thomson-beams',
  },
  sheddingFromHz: {
    symbol: 'f_from',
    label: 'lowest shedding frequency',
    unit: 'Hz',
    equation: '0.18 u_from / d',
    source: 'strouhal-cylinder',
  },
  sheddingToHz: {
    symbol: 'f_to',
    label: 'highest shedding frequency',
    unit: 'Hz',
    equation: '0.22 u_to / d',
    source: 'strouhal-cylinder',
  },
  meetingSpeedMs: {
    symbol: 'u_m',
    label: 'wind at which they meet',
    unit: 'm/s',
    equation: 'f_1 d / 0.2',
    source: 'strouhal-cylinder',
  },
  meetingSpeedLowMs: { symbol: 'u_low', label: 'the same, low', unit: 'm/s', equation: 'f_1 d / 0.22' },
  meetingSpeedHighMs: { symbol: 'u_high', label: 'the same, high', unit: 'm/s', equation: 'f_1 d / 0.18' },
  lockInFromMs: {
    symbol: 'u_4',
    label: 'lock-in from',
    unit: 'm/s',
    equation: '4 f_1 d',
    source: 'dnv-lock-in',
  },
  lockInToMs: { symbol: 'u_8', label: 'lock-in to', unit: 'm/s', equation: '8 f_1 d', source: 'dnv-lock-in' },
  reynoldsAtMeeting: {
    symbol: 'Re_m',
    label: 'Reynolds number where they meet',
    unit: '1',
    equation: 'u_m d / nu',
  },
} as const satisfies Record<keyof VibrationTrace, Quantity>;
