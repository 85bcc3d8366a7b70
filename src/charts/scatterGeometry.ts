import { extent, precisionFixed, scaleLinear } from 'd3';
import { fromSi } from '../units/convert';
import { formatQuantity, formatValue } from '../units/print';
import { shownUnit } from '../units/shownUnits';
import { firstFree, labelBox, roundPx, type Extent, type PlacedLabel } from './labelBox';

/** One thing to weigh: what it gives and what it takes. */
export interface ScatterItem {
  readonly id: string;
  readonly name: string;
  /** Short mark that stands at the point, such as the item's number. */
  readonly mark: string;
  readonly savingW: number;
  /** Mass or money: less is better. */
  readonly price: number;
}

export interface ScatterPoint extends ScatterItem {
  readonly x: number;
  readonly y: number;
  readonly label: PlacedLabel;
  /** Name of one that saves at least as much for at most the price, and is better in one of the two; else null. */
  readonly beatenBy: string | null;
}

export interface ScatterTick {
  readonly at: number;
  readonly label: string;
}

export interface ScatterGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly plot: Extent;
  readonly points: readonly ScatterPoint[];
  readonly xTicks: readonly ScatterTick[];
  readonly yTicks: readonly ScatterTick[];
  /** Where nothing is saved, and where nothing is paid. */
  readonly zeroX: number;
  readonly zeroY: number;
  readonly priceLabel: string;
  readonly description: string;
}

const heightPx = 190;
const edges = { left: 40, right: 14, top: 22, bottom: 38 };
const pointGapPx = 7;

/**
 * The item that beats another: it saves no less, takes no more, and is better in at least one. Of several the one that
 * saves most; items that are alike in both do not beat each other.
 */
export function beatenBy(item: ScatterItem, items: readonly ScatterItem[]): ScatterItem | null {
  const better = items.filter(
    (other) =>
      other.savingW >= item.savingW &&
      other.price <= item.price &&
      (other.savingW > item.savingW || other.price < item.price),
  );
  return better.reduce<ScatterItem | null>(
    (best, other) => (best === null || other.savingW > best.savingW ? other : best),
    null,
  );
}

/** Saving, upwards, against a price to the right; both axes hold zero. */
export function scatterGeometry(
  items: readonly ScatterItem[],
  priceLabel: string,
  widthPx: number,
): ScatterGeometry {
  const plot = {
    left: edges.left,
    right: widthPx - edges.right,
    top: edges.top,
    bottom: heightPx - edges.bottom,
  };
  const xScale = scaleLinear(domainOf(items.map(({ price }) => price)), [plot.left, plot.right]).nice(4);
  const saving = ({ savingW }: ScatterItem): number => fromSi(savingW, shownUnit('W'));
  const yScale = scaleLinear(domainOf(items.map(saving)), [plot.bottom, plot.top]).nice(4);
  const spots = items.map((item) => ({
    ...item,
    x: roundPx(xScale(item.price)),
    y: roundPx(yScale(saving(item))),
  }));
  const frame = { left: 0, right: widthPx, top: 0, bottom: plot.bottom + 2 };
  const taken: Extent[] = spots.map(({ x, y }) => ({ left: x - 4, right: x + 4, top: y - 4, bottom: y + 4 }));
  const points = spots.map((spot) => {
    const label = firstFree(placesOf(spot), taken, frame);
    taken.push(labelBox(label));
    return { ...spot, label, beatenBy: beatenBy(spot, items)?.name ?? null };
  });
  return {
    widthPx,
    heightPx,
    plot,
    points,
    xTicks: ticksOf(xScale, widthPx < 300 ? 3 : 4),
    yTicks: ticksOf(yScale, 4),
    zeroX: roundPx(xScale(0)),
    zeroY: roundPx(yScale(0)),
    priceLabel,
    description: descriptionOf(points, priceLabel),
  };
}

interface Scale {
  (value: number): number;
  ticks: (count: number) => number[];
}

function ticksOf(scale: Scale, count: number): ScatterTick[] {
  const values = scale.ticks(count);
  const [first = 0, second = 1] = values;
  const decimals = precisionFixed(second - first);
  return values.map((value) => ({
    at: roundPx(scale(value)),
    label: formatValue(value, '1', { decimals: Number.isInteger(value) ? 0 : decimals }),
  }));
}

/** From the least to the most with zero between them; a width of one where all are zero. */
function domainOf(values: readonly number[]): [number, number] {
  const [least = 0, most = 0] = extent([0, ...values]);
  return least === most ? [0, 1] : [least, most];
}

function placesOf({
  mark,
  x,
  y,
}: {
  readonly mark: string;
  readonly x: number;
  readonly y: number;
}): [PlacedLabel, ...PlacedLabel[]] {
  const lines = [mark];
  return [
    { lines, x: x + pointGapPx, y: y + 4, anchor: 'start' },
    { lines, x: x - pointGapPx, y: y + 4, anchor: 'end' },
    { lines, x, y: y - pointGapPx, anchor: 'middle' },
    { lines, x, y: y + pointGapPx + 9, anchor: 'middle' },
    { lines, x: x + pointGapPx, y: y - 8, anchor: 'start' },
    { lines, x: x + pointGapPx, y: y + 16, anchor: 'start' },
  ];
}

function descriptionOf(points: readonly ScatterPoint[], priceLabel: string): string {
  const parts = points.map(
    ({ name, savingW, price, beatenBy: better }) =>
      `${name}: ${formatQuantity(savingW, 'W')} for ${formatValue(price, '1')}${better === null ? '' : `, beaten by ${better}`}`,
  );
  return `Saving of each item alone against ${priceLabel}. ${parts.join('. ')}.`;
}
