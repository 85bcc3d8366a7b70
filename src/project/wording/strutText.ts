import type { StrutNotice, StrutProblem } from '../../physics/strut/strut';
import type { TurningNotice, TurningProblem } from '../../physics/strut/turningFairing';
import type { VibrationNotice, VibrationProblem } from '../../physics/vibration/vibration';
import { formatQuantity, formatRange } from '../../units/print';
import { cautions } from './cautions';

const [, , structuralCaution, , movingCaution] = cautions;

type Values = Readonly<Record<string, number>>;
type Texts<Code extends string> = Readonly<Record<Code, (values: Values) => string>>;

const strutTexts: Texts<StrutNotice['code']> = {
  'load-is-upper-bound': ({ upperBoundN = 0 }) =>
    `${formatQuantity(upperBoundN, 'kN')} is an upper bound: with an eccentric load, a bend, wind on its side or a dent it carries less. ${structuralCaution}`,
  'thin-wall': ({ wallM = 0, leastWallM = 0 }) =>
    `A wall of ${formatQuantity(wallM, 'mm')} is under a fiftieth of the diameter (${formatQuantity(leastWallM, 'mm')}): it may dent or buckle locally first. Common practice, no source.`,
  'flat-sides': ({ wallM = 0, leastWallM = 0 }) =>
    `Flat sides: where they are flattest the same rule would ask for a wall of ${formatQuantity(leastWallM, 'mm')} instead of ${formatQuantity(wallM, 'mm')}; they may buckle locally, or need ribs or a core.`,
  'yields-first': ({ yieldLoadN = 0, eulerLoadN = 0 }) =>
    `Too stocky for Euler: the wall yields at ${formatQuantity(yieldLoadN, 'kN')}, before ${formatQuantity(eulerLoadN, 'kN')}.`,
  'yield-not-known': () =>
    'The strength of this laminate is not known here: only its stiffness is, and the lay-up decides both.',
};

/** A notice about a strut in one or two sentences. */
export function strutNoticeText({ code, values }: StrutNotice): string {
  return strutTexts[code](values);
}

const turningTexts: Texts<TurningNotice['code']> = {
  'moving-part': () => movingCaution,
  'does-not-follow': ({ pivotM = 0, aerodynamicCentreM = 0 }) =>
    `It does not follow the wind: the pivot, ${formatQuantity(pivotM, 'mm')} behind the nose, is not ahead of the aerodynamic centre at ${formatQuantity(aerodynamicCentreM, 'mm')}.`,
  'may-not-follow': ({ pivotM = 0, aerodynamicCentreLowM = 0, aerodynamicCentreM = 0 }) =>
    `It may not follow the wind: the aerodynamic centre may lie as far forward as ${formatQuantity(aerodynamicCentreLowM, 'mm')} (${formatQuantity(aerodynamicCentreM, 'mm')} is likely), and the pivot is at ${formatQuantity(pivotM, 'mm')}.`,
  'may-flutter': ({ massCentreM = 0, pivotM = 0 }) =>
    `It may flutter: its mass centre, ${formatQuantity(massCentreM, 'mm')} behind the nose, lies behind the pivot at ${formatQuantity(pivotM, 'mm')}. A balance weight ahead of the pivot mends that.`,
  'hangs-off': ({ hangAngleRad = 0, residualRad = 0 }) =>
    `At this wind its weight may hold it ${formatQuantity(hangAngleRad, 'deg')} off, more than the ${formatQuantity(residualRad, 'deg')} that were typed.`,
  'ends-may-jam': ({ endClearanceM = 0, neededClearanceM = 0 }) =>
    `Its ends may jam: ${formatQuantity(endClearanceM, 'mm')} of clearance, where warmth alone may move an aluminium sleeve ${formatQuantity(neededClearanceM, 'mm')} along a carbon tube.`,
  'outside-table': ({ thicknessRatio = 0, chordReynolds = 0 }) =>
    `Thickness over chord ${formatQuantity(thicknessRatio, '1')} at a Reynolds number of ${formatQuantity(chordReynolds, '1')} lies outside the section table; the nearest is used.`,
};

/** A notice about a turning fairing in one or two sentences. */
export function turningNoticeText({ code, values }: TurningNotice): string {
  return turningTexts[code](values);
}

const vibrationTexts: Texts<VibrationNotice['code']> = {
  meets: ({ fromMs = 0, toMs = 0 }) =>
    `Vortices shed in its own first frequency at ${formatRange(fromMs, toMs, 'kn')} square to it: it may shake, tire its fastenings and drag more. A warning, not a prediction.`,
  'lock-in-near': ({ fromMs = 0, toMs = 0 }) =>
    `At ${formatRange(fromMs, toMs, 'kn')} square to it a member that moves may lock the shedding to its own frequency. A warning, not a prediction.`,
  irregular: ({ reynoldsAtMeeting = 0 }) =>
    `The frequencies would meet at a Reynolds number of ${formatQuantity(reynoldsAtMeeting, '1')}, where the shedding of a round bar is not known to be regular.`,
};

/** A notice about vibration in one or two sentences. */
export function vibrationNoticeText({ code, values }: VibrationNotice): string {
  return vibrationTexts[code](values);
}

/** What a calculation asked for and could not use, in one sentence. */
export const strutProblemTexts: Readonly<Record<StrutProblem | TurningProblem | VibrationProblem, string>> = {
  'not-a-number': 'A number is missing.',
  'not-positive': 'Lengths, walls, masses, speeds and stiffnesses must be above zero.',
  'thicker-than-chord': 'The thickness is larger than the chord.',
  'fairing-too-thick': 'A fairing thicker than half its chord has no section here; an ellipse has.',
  'wall-over-half-thickness': 'The wall is thicker than half the section.',
  'material-out-of-range':
    'The modulus must be above zero, between its low and its high value; so must density and strength.',
  'place-off-the-chord': 'Pivot and mass centre must lie between nose and tail.',
  'angle-out-of-range': 'The residual error must be above 0° and at most 15°, the lean at most 90°.',
  'speeds-out-of-order': 'The least speed is larger than the largest.',
};
