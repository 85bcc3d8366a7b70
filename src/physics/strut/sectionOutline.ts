import { halfThickness, halfThicknessSlopes } from '../section/fairingOutline';

/** The outer outline of a strut's section, m. The chord of an ellipse is its longer axis; a fairing is a NACA four-digit section. */
export type SectionOutline =
  | { readonly kind: 'round'; readonly diameterM: number }
  | { readonly kind: 'ellipse' | 'fairing'; readonly chordM: number; readonly thicknessM: number };

export type OutlineProblem = 'not-a-number' | 'not-positive' | 'thicker-than-chord' | 'fairing-too-thick';

/** Beyond this thickness over chord a four-digit outline is no fairing any more. */
const thickestFairing = 0.5;

/** A place on the upper half of an outline and how it moves with its parameter; x from the nose along the chord, y across it. */
export interface OutlinePlace {
  xM: number;
  yM: number;
  dxM: number;
  dyM: number;
  /** 1/m, positive where the outline bulges outwards. */
  curvaturePerM: number;
}

export function emptyPlace(): OutlinePlace {
  return { xM: 0, yM: 0, dxM: 0, dyM: 0, curvaturePerM: 0 };
}

export function chordOf(outline: SectionOutline): number {
  return outline.kind === 'round' ? outline.diameterM : outline.chordM;
}

export function thicknessOf(outline: SectionOutline): number {
  return outline.kind === 'round' ? outline.diameterM : outline.thicknessM;
}

/** What is wrong with an outline, or null. */
export function outlineProblem(outline: SectionOutline): OutlineProblem | null {
  const [chordM, thicknessM] = [chordOf(outline), thicknessOf(outline)];
  if (!Number.isFinite(chordM) || !Number.isFinite(thicknessM)) return 'not-a-number';
  if (chordM <= 0 || thicknessM <= 0) return 'not-positive';
  if (thicknessM > chordM) return 'thicker-than-chord';
  return outline.kind === 'fairing' && thicknessM > thickestFairing * chordM ? 'fairing-too-thick' : null;
}

/**
 * The upper half as a curve of u from 0 (nose) to pi (tail): x = c (1 - cos u) / 2, y = t/2 sin u of an ellipse, and of a
 * fairing the half thickness, which is a polynomial of sqrt(x/c) = sin(u/2): both run smoothly round the nose.
 */
export function upperPlace(outline: SectionOutline, u: number, out: OutlinePlace): OutlinePlace {
  const [chordM, thicknessM] = [chordOf(outline), thicknessOf(outline)];
  const [sine, cosine] = [Math.sin(u), Math.cos(u)];
  let bendM = (-thicknessM / 2) * sine;
  out.xM = (chordM * (1 - cosine)) / 2;
  out.dxM = (chordM * sine) / 2;
  out.yM = (thicknessM / 2) * sine;
  out.dyM = (thicknessM / 2) * cosine;
  if (outline.kind === 'fairing') {
    const [r, q] = [Math.sin(u / 2), Math.cos(u / 2)];
    const [first, second] = halfThicknessSlopes(thicknessM / chordM, r);
    out.yM = chordM * halfThickness(thicknessM / chordM, r * r);
    out.dyM = (chordM * first * q) / 2;
    bendM = (chordM * (second * q * q - first * r)) / 4;
  }
  const stretch = Math.hypot(out.dxM, out.dyM);
  out.curvaturePerM = (out.dyM * ((chordM * cosine) / 2) - out.dxM * bendM) / stretch ** 3;
  return out;
}

/** Of the radius of curvature of the sides: steps from nose to tail, the middle among them, where an ellipse is flattest. */
const radiusSteps = 200;

/** Largest radius of curvature of the outline, m: how flat its sides are. Exact for an ellipse (c^2 / (2 t)), to 1e-3 for a fairing. */
export function flattestRadiusM(outline: SectionOutline): number {
  const place = emptyPlace();
  let least = Infinity;
  for (let i = 1; i < radiusSteps; i += 1) {
    least = Math.min(least, upperPlace(outline, (Math.PI * i) / radiusSteps, place).curvaturePerM);
  }
  return 1 / least;
}
