import { thicknessOf, type SectionOutline } from './sectionOutline';
import { strutOf, type StrutInput, type StrutNotice, type StrutProblem, type StrutTrace } from './strut';
import type { StrutMaterial } from './strutMaterial';

/** The new section: its outline and material, over the tube's own length. */
export interface NewSection {
  readonly outline: SectionOutline;
  readonly material: StrutMaterial;
}

export type ReplacementResult =
  | {
      readonly kind: 'replacement';
      readonly tube: StrutTrace;
      readonly section: StrutTrace;
      readonly massChangeKg: number;
      readonly notices: readonly StrutNotice[];
    }
  | {
      readonly kind: 'problem';
      readonly where: 'tube' | 'section';
      readonly problem: StrutProblem;
    }
  /** Even solid it carries less than the tube. */
  | { readonly kind: 'too-weak'; readonly neededN: number; readonly solidN: number };

const halvings = 60;
/** Of half the thickness. */
const smallestStep = 1e-9;

/**
 * The wall with which a section carries what a tube carries: the tube's smaller of Euler and yield load. The load never
 * falls with the wall, so the wall is closed in by halving, to a part in 1e9 of it; it is the thinnest one, whatever can
 * be made, and its warnings come with it. Between a material that yields and one whose yield is not known the comparison
 * leaves the second one's strength out, and `yield-not-known` says so.
 *
 * Example: aluminium 6082 50 x 2 mm, 2 m, carries at most 15.0 kN; an ellipse of 70 x 35 mm in the same metal needs 3.88 mm
 * and weighs 1.67 kg more. Source: euler-1744, green-theorem.
 */
export function replaceTube(tube: StrutInput, next: NewSection): ReplacementResult {
  const old = strutOf(tube);
  if (old.kind === 'problem') return { ...old, where: 'tube' };
  const withWall = (wallM: number) => strutOf({ ...next, wallM, lengthM: tube.lengthM });
  const thickestM = thicknessOf(next.outline) / 2;
  const solid = withWall(thickestM);
  if (solid.kind === 'problem') return { ...solid, where: 'section' };
  const neededN = old.trace.upperBoundN;
  if (solid.trace.upperBoundN < neededN)
    return { kind: 'too-weak', neededN, solidN: solid.trace.upperBoundN };
  let [tooThinM, enough] = [0, solid];
  for (let i = 0; i < halvings && enough.trace.wallM - tooThinM > smallestStep * thickestM; i += 1) {
    const middle = withWall((tooThinM + enough.trace.wallM) / 2);
    if (middle.kind === 'strut' && middle.trace.upperBoundN >= neededN) enough = middle;
    else tooThinM = (tooThinM + enough.trace.wallM) / 2;
  }
  const massChangeKg = enough.trace.massKg - old.trace.massKg;
  return {
    kind: 'replacement',
    tube: old.trace,
    section: enough.trace,
    massChangeKg,
    notices: enough.notices,
  };
}
