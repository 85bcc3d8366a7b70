import type { StandingShape } from '../../physics/envelope/uniformWind';
import type { Dimension } from '../../physics/fitting/fittingInput';
import type { EndKind } from '../../physics/section/endEffect';
import { shapeFacts } from './envelopeShapes';
import type { EndsId, EnvelopeShapeId } from './envelopeTexts';
import type { EnvelopeNumbers } from './readEnvelope';

export const endsAs: Readonly<Record<EndsId, readonly [EndKind, EndKind]>> = {
  free: ['free', 'free'],
  oneOnSurface: ['surface', 'free'],
  joined: ['joined', 'joined'],
};

/** Ends that count when nobody says: both free, as the textbooks' finite bars have them. */
export const endsWhenUnsaid: EndsId = 'free';

/** A plate whose thickness nobody gives: a fiftieth of its smaller side, on the flat part of the diagram. */
export const plateThicknessShare = 0.02;

function size(valueM: number): Dimension {
  return { valueM, basis: 'measured', doubtId: 'own:envelope:size' };
}

const memberParts = {
  coefficient: null,
  coefficientDoubtId: 'own:envelope:coefficient',
  friction: false,
} as const;

/** The rectangle with its broad side or its depth to the wind, as the ledger holds one: chord and thickness. */
function rectangle(widthM: number, depthM: number, lengthM: number, ends: EndsId): StandingShape {
  const isBroadside = widthM >= depthM;
  return {
    lengthM,
    shape: {
      kind: 'rectangularBar',
      chord: size(Math.max(widthM, depthM)),
      thickness: size(Math.min(widthM, depthM)),
      cornerRadiusM: 0,
      direction: { kind: 'fixed', angleRad: isBroadside ? Math.PI / 2 : 0 },
      directionDoubtId: 'own:envelope:direction',
      ends: endsAs[ends],
      ...memberParts,
    },
  };
}

/** Sizes that a shape needs, as words for what is missing; null when they are all there. */
export function missingSizes(numbers: EnvelopeNumbers, shape: EnvelopeShapeId): string | null {
  const { width, length, depth } = numbers;
  const { area, family } = shapeFacts[shape];
  if (family.kind === 'named') return null;
  if (width === null) return area === 'disc' ? 'its diameter' : 'its width across the wind';
  if (area === 'widthTimesLength' && length === null) return 'its length';
  return family.kind === 'rectangularBar' && depth === null ? 'its depth along the wind' : null;
}

/** The shape as the ledger computes one; null for coefficients that go by name, or when a size is missing. */
export function standingShape(numbers: EnvelopeNumbers, shape: EnvelopeShapeId): StandingShape | null {
  const { family } = shapeFacts[shape];
  if (family.kind === 'named' || missingSizes(numbers, shape) !== null) return null;
  const ends = numbers.ends ?? endsWhenUnsaid;
  const widthM = numbers.width?.valueSi ?? NaN;
  const lengthM = numbers.length?.valueSi ?? 0;
  switch (family.kind) {
    case 'roundBar':
      return {
        lengthM,
        shape: {
          kind: 'roundBar',
          diameter: size(widthM),
          roughnessM: 0,
          ends: endsAs[ends],
          ...memberParts,
        },
      };
    case 'wire':
      return {
        lengthM,
        shape: {
          kind: 'wire',
          construction: family.construction,
          diameter: size(widthM),
          ends: ['joined', 'joined'],
          ...memberParts,
        },
      };
    case 'sphere':
      return {
        lengthM: 0,
        shape: {
          kind: 'sphere',
          diameter: size(widthM),
          roughnessM: 0,
          coefficient: null,
          coefficientDoubtId: 'own:envelope:coefficient',
        },
      };
    case 'plate': {
      const [short, long] = [Math.min(widthM, lengthM), Math.max(widthM, lengthM)];
      const depthM = numbers.depth?.valueSi ?? plateThicknessShare * short;
      return rectangle(short, depthM, long, ends);
    }
    case 'rectangularBar':
      return rectangle(widthM, numbers.depth?.valueSi ?? widthM, lengthM, ends);
  }
}
