import type {
  CarryingTube,
  Currency,
  TautWire,
  TurningSetting,
  TypedMember,
} from '../project/bench/benchTypes';
import { currencies } from '../project/bench/benchTypes';
import { benchFromWords, benchToWords } from '../project/bench/benchWords';
import { candidateMaterials, type Candidate } from '../project/bench/candidates';

/** What stands on the bench, and how it is looked at. */
export interface Bench {
  /** A fitting of the ledger; null for the typed member, or until one is chosen. */
  readonly memberId: string | null;
  /** A member that no ledger holds; null for one of the ledger. */
  readonly typed: TypedMember | null;
  /** None yet: the first ones of the member are taken. */
  readonly candidates: readonly Candidate[];
  /** The candidate whose fields are open; null for the first that is not bare. */
  readonly chosenId: string | null;
  readonly currency: Currency;
  readonly isOtherTack: boolean;
  readonly tube: CarryingTube;
  /** Of a member that is a wire. */
  readonly wire: TautWire;
  readonly turning: TurningSetting;
}

/** A common pole: common practice, no source. */
const usualTube: CarryingTube = { material: 'aluminium6082', wallM: 0.0025 };
/** A 1 x 19 wire of 8 mm at a sixth of its breaking load: from memory. */
const usualWire: TautWire = { tensionN: 8000, massPerLengthKgM: 0.31 };
/** The pivot a fifth of the chord behind the nose: common practice, no source. */
const usualTurning: TurningSetting = { pivotShare: 0.2, massCentreShare: null, endClearanceM: 0.003 };

export const usualBench: Bench = {
  memberId: null,
  typed: null,
  candidates: [],
  chosenId: null,
  currency: 'dragAlongWindN',
  isOtherTack: false,
  tube: usualTube,
  wire: usualWire,
  turning: usualTurning,
};

/** An 80 mm pole of 3 m: common practice, no source. */
export const usualTyped: TypedMember = {
  diameterM: 0.08,
  lengthM: 3,
  footAboveDeckM: 0,
  leanAftDeg: 0,
  leanOutDeg: 0,
  ends: ['surface', 'free'],
};

/** Both ends of every number that a bench accepts, SI or degrees as its name says. */
export const benchRanges = {
  diameterM: [0.002, 1],
  lengthM: [0.05, 60],
  footAboveDeckM: [-5, 100],
  leanDeg: [-180, 180],
  wallM: [0.0001, 0.5],
  tensionN: [1, 10_000_000],
  massPerLengthKgM: [0.001, 1000],
  share: [0.01, 0.99],
  clearanceM: [0, 0.5],
} as const;

type RangeName = keyof typeof benchRanges;

const kept = {
  chosen: 'see',
  currency: 'in',
  tack: 'tack',
  tube: 'tube',
  wire: 'wire',
  turning: 'turning',
} as const;

/** What a bench holds as the words of an address; what is usual is left out. */
export function benchWordsOf(bench: Bench): string {
  const { memberId, candidates, typed, tube, wire, turning } = bench;
  const words = new URLSearchParams();
  if (bench.chosenId !== null) words.set(kept.chosen, bench.chosenId);
  if (bench.currency !== usualBench.currency) words.set(kept.currency, bench.currency);
  if (bench.isOtherTack) words.set(kept.tack, 'other');
  if (!isSameTube(tube)) words.set(kept.tube, [tube.material, tube.wallM].join('_'));
  if (wire.tensionN !== usualWire.tensionN || wire.massPerLengthKgM !== usualWire.massPerLengthKgM) {
    words.set(kept.wire, [wire.tensionN, wire.massPerLengthKgM].join('_'));
  }
  if (!isSameTurning(turning)) {
    words.set(
      kept.turning,
      [turning.pivotShare, turning.massCentreShare ?? '', turning.endClearanceM].join('_'),
    );
  }
  return [benchToWords({ memberId, typed, candidates }), words.toString()]
    .filter((part) => part !== '')
    .join('&');
}

function isSameTube({ material, wallM }: CarryingTube): boolean {
  return material === usualTube.material && wallM === usualTube.wallM;
}

function isSameTurning({ pivotShare, massCentreShare, endClearanceM }: TurningSetting): boolean {
  return (
    pivotShare === usualTurning.pivotShare &&
    massCentreShare === usualTurning.massCentreShare &&
    endClearanceM === usualTurning.endClearanceM
  );
}

const idWord = /^[\w-]{1,64}$/;

/** The bench that words ask for; what cannot be read is as usual. */
export function benchOf(text: string): Bench {
  const words = new URLSearchParams(text);
  const { memberId, typed, candidates } = benchFromWords(text);
  const chosenId = words.get(kept.chosen) ?? '';
  return {
    memberId,
    typed,
    candidates,
    // Without candidates the member's first ones are meant, which are not known here.
    chosenId: idWord.test(chosenId) ? chosenId : null,
    currency: currencies.find(({ id }) => id === words.get(kept.currency))?.id ?? usualBench.currency,
    isOtherTack: words.get(kept.tack) === 'other',
    tube: tubeFrom(words.get(kept.tube)) ?? usualTube,
    wire: wireFrom(words.get(kept.wire)) ?? usualWire,
    turning: turningFrom(words.get(kept.turning)) ?? usualTurning,
  };
}

/** A number that is there and in its range, else null. */
function numberIn(text: string | undefined, name: RangeName): number | null {
  const value = text === undefined || text === '' ? Number.NaN : Number(text);
  const [from, to] = benchRanges[name];
  return value >= from && value <= to ? value : null;
}

function tubeFrom(text: string | null): CarryingTube | null {
  const [material, wall] = (text ?? '').split('_');
  const found = candidateMaterials.find(({ id }) => id === material);
  const wallM = numberIn(wall, 'wallM');
  return found === undefined || wallM === null ? null : { material: found.id, wallM };
}

function wireFrom(text: string | null): TautWire | null {
  const [tension, mass] = (text ?? '').split('_');
  const tensionN = numberIn(tension, 'tensionN');
  const massPerLengthKgM = numberIn(mass, 'massPerLengthKgM');
  return tensionN === null || massPerLengthKgM === null ? null : { tensionN, massPerLengthKgM };
}

function turningFrom(text: string | null): TurningSetting | null {
  const [pivot, mass, clearance] = (text ?? '').split('_');
  const pivotShare = numberIn(pivot, 'share');
  const endClearanceM = numberIn(clearance, 'clearanceM');
  if (pivotShare === null || endClearanceM === null) return null;
  return { pivotShare, massCentreShare: numberIn(mass, 'share'), endClearanceM };
}
