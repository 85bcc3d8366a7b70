import { interpolateRgb } from 'd3';
import type { SceneItem } from './scene';
import { tintOf, tintShare, type TintScale } from './tints';

/** The colours of a picture, by meaning. */
export interface Palette {
  readonly paper: string;
  readonly ink: string;
  readonly muted: string;
  readonly rule: string;
  readonly hairline: string;
  readonly cost: string;
  readonly saving: string;
}

/** What a picture says of each fitting. */
export interface PictureMeaning {
  /** The measure that is coloured, by fitting. */
  readonly values: ReadonlyMap<string, number>;
  readonly scale: TintScale;
  /** Which colour the tints are of. */
  readonly hue: 'cost' | 'saving';
  /** Changed by the plan: cased in the colour of savings. */
  readonly changedIds: ReadonlySet<string>;
  /** Left out of the sums, retracted, stowed or removed: dashed and empty. */
  readonly ghostIds: ReadonlySet<string>;
}

/** How one item is drawn. */
export interface Paint {
  readonly fill: string | null;
  readonly stroke: string;
  readonly widthPx: number;
  /** Lengths of stroke and gap, px; empty for a full line. */
  readonly dash: readonly number[];
  /** A wider line under it; null for none. */
  readonly casing: { readonly stroke: string; readonly widthPx: number } | null;
}

const edgePx = 0.75;
const casingPx = 3;
/** A line one pixel wide in the lightest tint would not be seen. */
const leastLineShare = 0.5;
const ghostDash = [3, 3] as const;
const pushDash = [1.5, 2] as const;

/** How an item is drawn; lightness alone tells the tints apart, dashes and casing the rest, so that it prints in black. */
export function paintOf(item: SceneItem, meaning: PictureMeaning, palette: Palette): Paint {
  if (item.role === 'hull') return hullPaint(item, meaning, palette);
  if (item.role === 'rig') return plain(null, palette.rule, 1);
  const id = item.fittingId ?? '';
  if (meaning.ghostIds.has(id)) return { ...plain(null, palette.muted, 1), dash: ghostDash };
  const value = meaning.values.get(id) ?? 0;
  const step = tintOf(meaning.scale, value);
  const casing = meaning.changedIds.has(id)
    ? { stroke: palette.saving, widthPx: Math.max(item.strokePx, edgePx) + 2 * casingPx }
    : null;
  const tint = tintIn(step, meaning, palette, item.strokePx > 0);
  if (item.strokePx > 0)
    return {
      fill: null,
      stroke: tint ?? palette.ink,
      widthPx: item.strokePx,
      dash: step === null && value < 0 ? pushDash : [],
      casing,
    };
  const dash = value < 0 || item.isDragArea ? pushDash : [];
  return { fill: tint ?? palette.paper, stroke: palette.ink, widthPx: edgePx, dash, casing };
}

/** Face by face with quiet edges, in the tint of the fitting that stands for the hull. */
function hullPaint({ fittingId }: SceneItem, meaning: PictureMeaning, palette: Palette): Paint {
  const isTinted = fittingId !== null && !meaning.ghostIds.has(fittingId);
  const step = isTinted ? tintOf(meaning.scale, meaning.values.get(fittingId) ?? 0) : null;
  return plain(tintIn(step, meaning, palette, false) ?? palette.paper, palette.rule, 0.5);
}

function plain(fill: string | null, stroke: string, widthPx: number): Paint {
  return { fill, stroke, widthPx, dash: [], casing: null };
}

function tintIn(
  step: number | null,
  { scale, hue }: PictureMeaning,
  palette: Palette,
  isLine: boolean,
): string | null {
  if (step === null) return null;
  const share = tintShare(step, scale.steps);
  return tintColour(palette, hue, isLine ? Math.max(share, leastLineShare) : share);
}

/** The colour of a share of full colour on paper. */
function tintColour(palette: Palette, hue: 'cost' | 'saving', share: number): string {
  return interpolateRgb(palette.paper, palette[hue])(share);
}
