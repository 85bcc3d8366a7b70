import type { Unit } from '../../units/unitTable';

/** One line of a chart with its band; SI, one value for each x. NaN where there is none. */
export interface CurveInput {
  readonly id: string;
  /** On the line. */
  readonly name: string;
  /** Bare and chosen have a colour each, the others are ink with a dash of their own. */
  readonly look: 'bare' | 'chosen' | 'other';
  /** Which dash an `other` has, from 0. */
  readonly dashIndex: number;
  readonly best: ArrayLike<number>;
  readonly low: ArrayLike<number>;
  readonly high: ArrayLike<number>;
}

/** Where two lines cross, with the range of its place. */
export interface RingInput {
  readonly x: number;
  readonly y: number;
  readonly lowX: number;
  readonly highX: number;
  /** Beside the ring; empty for a ring that only the words under the chart name. */
  readonly label: string;
}

/** A stretch of the x axis, shaded from top to bottom. */
export interface StretchInput {
  readonly fromX: number;
  readonly toX: number;
  readonly kind: 'flat' | 'warning';
  readonly label: string;
}

export interface XAxisInput {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
  /** Under the axis: what it is, with its unit. */
  readonly name: string;
}

export interface CurveChartInput {
  readonly xs: ArrayLike<number>;
  readonly xAxis: XAxisInput;
  /** The usual unit of the values; the reader's own is drawn. */
  readonly unit: Unit;
  readonly isLogarithmic: boolean;
  readonly curves: readonly CurveInput[];
  readonly rings: readonly RingInput[];
  readonly stretches: readonly StretchInput[];
  readonly now: { readonly x: number; readonly label: string } | null;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** What a mark means; the page and the file each know how it looks. */
export type MarkRole =
  | 'grid'
  | 'axis'
  | 'tick'
  | 'note'
  | 'band'
  | 'saves'
  | 'costs'
  | 'flat'
  | 'warning'
  | 'bare'
  | 'chosen'
  | 'other'
  | 'now'
  | 'spread'
  | 'ring'
  | 'label'
  | 'bareLabel'
  | 'chosenLabel';

/** One thing that is drawn, in pixels; later marks lie above earlier ones. */
export type ChartMark =
  | {
      readonly kind: 'path';
      readonly role: MarkRole;
      readonly d: string;
      /** Lengths of stroke and gap; absent for a full line. */
      readonly dash?: string;
    }
  | {
      readonly kind: 'text';
      readonly role: MarkRole;
      readonly x: number;
      readonly y: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly text: string;
    }
  | { readonly kind: 'ring'; readonly role: MarkRole; readonly x: number; readonly y: number };

export interface CurveChartGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly marks: readonly ChartMark[];
}

/** Radius of a ring, px. */
export const ringPx = 4.5;
