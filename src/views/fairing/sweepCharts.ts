import type { CurveChartInput, CurveInput, RingInput, XAxisInput } from '../../charts/curves/curveChartTypes';
import type {
  BenchCrossing,
  BenchSweep,
  Currency,
  CurrencyCrossings,
  SweepOver,
} from '../../project/bench/benchTypes';
import { currencies } from '../../project/bench/benchTypes';
import type { Candidate } from '../../project/bench/candidates';
import { fromSi, toSi } from '../../units/convert';
import { formatValue, printUnit } from '../../units/print';
import { quantityIn } from '../../units/printIn';
import { shownUnit } from '../../units/shownUnits';
import type { Unit } from '../../units/unitTable';

/** One candidate with its sweep, and where it crosses the bare member. */
export interface SweptCandidate {
  readonly candidate: Candidate;
  readonly sweep: BenchSweep;
  readonly crossings: readonly CurrencyCrossings[];
}

const fallback = { id: 'trackPowerW', label: 'track power', unit: 'W' } as const;

export function currencyOf(id: Currency): (typeof currencies)[number] {
  return currencies.find((each) => each.id === id) ?? fallback;
}

type Look = Pick<CurveInput, 'look' | 'dashIndex'>;

/** How the candidates are told apart on every chart: the bare member, the one whose fields are open, and the rest. */
export function looksOf(candidates: readonly Candidate[], chosenId: string): ReadonlyMap<string, Look> {
  const looks = new Map<string, Look>();
  let dashIndex = 0;
  for (const { id, kind } of candidates) {
    if (kind === 'bare') looks.set(id, { look: 'bare', dashIndex: 0 });
    else if (id === chosenId) looks.set(id, { look: 'chosen', dashIndex: 0 });
    else {
      looks.set(id, { look: 'other', dashIndex });
      dashIndex += 1;
    }
  }
  return looks;
}

interface SweepChartOptions {
  readonly swept: readonly SweptCandidate[];
  readonly chosenId: string;
  readonly currency: Currency;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The chart of a currency over what was swept; null where nothing was. */
export function sweepChartInput(options: SweepChartOptions): CurveChartInput | null {
  const { swept, chosenId, currency, widthPx, heightPx } = options;
  const first = swept[0]?.sweep;
  if (first === undefined) return null;
  const looks = looksOf(
    swept.map(({ candidate }) => candidate),
    chosenId,
  );
  const curves = swept.map(({ candidate, sweep }): CurveInput => {
    const look = looks.get(candidate.id) ?? { look: 'other', dashIndex: 0 };
    return { id: candidate.id, name: candidate.name, ...look, ...sweep.bands[currency] };
  });
  const over = first.question.over;
  return {
    xs: first.xs,
    xAxis: over === 'apparentAngle' ? angleAxis : speedAxis(first.xs, over),
    unit: currencyOf(currency).unit,
    isLogarithmic: isLogarithmic(over, currency),
    curves,
    rings: swept.flatMap((each) => ringsOf(each, currency, chosenId)),
    stretches: [],
    now:
      first.presentAt === null ? null : { x: first.presentAt, label: `now ${xText(first.presentAt, over)}` },
    widthPx,
    heightPx,
  };
}

/** Factors are the message of drag along the wind over the angle: it is never negative, and a fairing is a tenth. */
export function isLogarithmic(over: SweepOver, currency: Currency): boolean {
  return over === 'apparentAngle' && currency === 'dragAlongWindN';
}

/** A place on the axis of a sweep with its unit. */
export function xText(x: number, over: SweepOver): string {
  return over === 'apparentAngle'
    ? quantityIn(x, 'deg', { decimals: 1 })
    : quantityIn(x, shownUnit('kn'), { decimals: 1 });
}

const angleAxis: XAxisInput = {
  from: 0,
  to: Math.PI,
  ticks: [0, 30, 60, 90, 120, 150, 180].map((deg) => ({ at: toSi(deg, 'deg'), label: `${deg}°` })),
  name: 'apparent wind angle from the bow',
};

const speedNames = { apparentSpeed: 'apparent wind speed', boatSpeed: 'boat speed' } as const;

/** Round ticks in the reader's unit of speed, about five of them. */
function speedAxis(xs: ArrayLike<number>, over: 'apparentSpeed' | 'boatSpeed'): XAxisInput {
  const [from, to] = [xs[0] ?? 0, xs[xs.length - 1] ?? 1];
  const unit: Unit = shownUnit('kn');
  const step = roundStep((fromSi(to, unit) - fromSi(from, unit)) / 5);
  const first = Math.ceil(fromSi(from, unit) / step - 1e-9);
  const count = Math.floor(fromSi(to, unit) / step + 1e-9) - first;
  const ticks = Array.from({ length: Math.max(count + 1, 0) }, (_, i) => {
    const at = toSi((first + i) * step, unit);
    return { at, label: formatValue(at, 'kn', { decimals: step < 1 ? 1 : 0 }) };
  });
  return { from, to, ticks, name: `${speedNames[over]}, ${printUnit('kn')}` };
}

/** The next of 1, 2, 5 times a power of ten. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return power * ([1, 2, 5].find((step) => step * power >= least) ?? 10);
}

/** The rings of a candidate; only those of the chosen one have words beside them, the list under the chart names all. */
function ringsOf(
  { candidate, sweep, crossings }: SweptCandidate,
  currency: Currency,
  chosenId: string,
): RingInput[] {
  const own = crossings.find((each) => each.currency === currency)?.crossings ?? [];
  return own.map((crossing) => ({
    x: crossing.at,
    y: valueAt(sweep, currency, crossing),
    lowX: crossing.from,
    highX: crossing.to,
    label: candidate.id === chosenId ? xText(crossing.at, sweep.question.over) : '',
  }));
}

/** Between the two places of the sweep on either side. */
function valueAt({ xs, bands }: BenchSweep, currency: Currency, { at }: BenchCrossing): number {
  const { best } = bands[currency];
  const after = Math.max(
    xs.findIndex((x) => x >= at),
    1,
  );
  const [x0 = 0, x1 = 1, y0 = 0, y1 = 0] = [xs[after - 1], xs[after], best[after - 1], best[after]];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}

/** Which places of a sweep stand in its table: every ten degrees, or a tenth of the way. */
export function tablePlaces({ xs, question }: BenchSweep): readonly number[] {
  const step = Math.max(Math.round((xs.length - 1) / (question.over === 'apparentAngle' ? 18 : 10)), 1);
  return Array.from({ length: Math.floor((xs.length - 1) / step) + 1 }, (_, i) => i * step);
}
