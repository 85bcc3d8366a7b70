import { precisionFixed, scaleLinear, tickStep } from 'd3';
import { quantityIn, rangeIn, valueIn } from '../units/printIn';
import type { Ranged } from '../physics/fitting/fittingInput';
import { labelBox, roundPx } from './labelBox';

/** The three answers that an envelope check holds against each other; null where there is none. */
export interface EnvelopePowers {
  readonly claimedW: number | null;
  /** What the written numbers themselves give. */
  readonly ownW: number | null;
  readonly handbookW: Ranged;
}

export interface EnvelopeBar {
  readonly id: 'claimed' | 'own' | 'handbook';
  /** Top of the bar, px; all bars start at `zeroX`. */
  readonly y: number;
  readonly widthPx: number;
  readonly label: string;
  readonly labelX: number;
  /** Behind the bar's end, or inside it where there is no room behind. */
  readonly labelAnchor: 'start' | 'end';
}

export interface EnvelopeBarsGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly zeroX: number;
  readonly barPx: number;
  readonly axisY: number;
  readonly bars: readonly EnvelopeBar[];
  readonly spread: { readonly fromX: number; readonly toX: number; readonly y: number };
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly description: string;
}

const barPx = 14;
const rowPx = 26;
const topPx = 4;
const axisPx = 20;
const leftPx = 1;
const rightPx = 8;
const labelGapPx = 8;

/** Bars on one scale from zero, in watts. */
export function envelopeBars(powers: EnvelopePowers, widthPx: number): EnvelopeBarsGeometry {
  const rows = rowsOf(powers);
  const mostW = Math.max(powers.handbookW.high, ...rows.map(({ powerW }) => powerW), 1e-9);
  const scale = scaleLinear([0, mostW], [leftPx, Math.max(widthPx - rightPx, leftPx + 1)]);
  const axisY = topPx + rows.length * rowPx;
  const handbookY = topPx + (rows.length - 1) * rowPx;
  return {
    widthPx,
    heightPx: axisY + axisPx,
    zeroX: leftPx,
    barPx,
    axisY,
    bars: rows.map(({ id, powerW, words }, i) => ({
      id,
      y: topPx + i * rowPx,
      widthPx: roundPx(scale(powerW) - leftPx),
      label: words,
      ...placed(words, scale(powerW), widthPx),
    })),
    spread: {
      fromX: roundPx(scale(powers.handbookW.low)),
      toX: roundPx(scale(powers.handbookW.high)),
      y: handbookY + barPx + 5,
    },
    ticks: ticksOf(mostW, scale),
    description: descriptionOf(powers),
  };
}

interface Row {
  readonly id: EnvelopeBar['id'];
  readonly powerW: number;
  readonly words: string;
}

function rowsOf({ claimedW, ownW, handbookW }: EnvelopePowers): readonly Row[] {
  const row = (id: Row['id'], powerW: number, words: string): Row => ({
    id,
    powerW: Math.max(powerW, 0),
    words: `${quantityIn(powerW, 'W')} ${words}`,
  });
  return [
    ...(claimedW === null ? [] : [row('claimed', claimedW, 'claimed')]),
    ...(ownW === null ? [] : [row('own', ownW, 'from its own numbers')]),
    row('handbook', handbookW.best, 'with the handbook’s coefficient'),
  ];
}

function placed(words: string, endX: number, widthPx: number): Pick<EnvelopeBar, 'labelX' | 'labelAnchor'> {
  const behind = labelBox({ lines: [words], x: endX + labelGapPx, y: 0, anchor: 'start' });
  if (behind.right <= widthPx) return { labelX: roundPx(endX + labelGapPx), labelAnchor: 'start' };
  return { labelX: roundPx(endX - labelGapPx), labelAnchor: 'end' };
}

function ticksOf(mostW: number, scale: (powerW: number) => number): EnvelopeBarsGeometry['ticks'] {
  const values = scaleLinear([0, mostW], [0, 1]).ticks(4);
  const decimals = precisionFixed(tickStep(0, mostW, 4));
  return values.map((powerW, i) => ({
    x: roundPx(scale(powerW)),
    label:
      i === values.length - 1
        ? quantityIn(powerW, 'W', { decimals })
        : powerW === 0
          ? '0'
          : valueIn(powerW, 'W', { decimals }),
  }));
}

function descriptionOf({ claimedW, ownW, handbookW }: EnvelopePowers): string {
  const parts = [
    ...(claimedW === null ? [] : [`claimed ${quantityIn(claimedW, 'W')}`]),
    ...(ownW === null ? [] : [`from its own numbers ${quantityIn(ownW, 'W')}`]),
    `with the handbook’s coefficient ${quantityIn(handbookW.best, 'W')} (${rangeIn(handbookW.low, handbookW.high, 'W')})`,
  ];
  return `Air power: ${parts.join('; ')}.`;
}
