import { formatQuantity, formatRange } from '../../units/print';
import { currencies, type BenchCrossing, type Currency, type SweepOver } from './benchTypes';

/** Of a candidate against the member as it stands, where nothing crosses. */
export type Always = 'wins' | 'loses' | 'same';

const unitOf = { apparentAngle: 'deg', apparentSpeed: 'kn', boatSpeed: 'kn' } as const;
const wordOf = { apparentAngle: 'angle', apparentSpeed: 'wind speed', boatSpeed: 'boat speed' } as const;

function labelOf(currency: Currency): string {
  return currencies.find(({ id }) => id === currency)?.label ?? '';
}

/** "drag along the wind: 17.2° (16.1–18.4°); below it Fairing wins". */
export function crossingText(
  { at, from, to, winsBelow }: Omit<BenchCrossing, 'text'>,
  currency: Currency,
  name: string,
  over: SweepOver,
): string {
  const unit = unitOf[over];
  const range = from < to ? ` (${formatRange(from, to, unit)})` : '';
  const side = winsBelow ? 'below' : 'above';
  return `${labelOf(currency)}: ${formatQuantity(at, unit)}${range}; ${side} it ${name} wins`;
}

const alwaysTexts: Readonly<Record<Always, (name: string, word: string) => string>> = {
  wins: (name, word) => `no crossing; ${name} wins at every ${word} shown`,
  loses: (name, word) => `no crossing; ${name} loses at every ${word} shown`,
  same: () => 'no crossing; there is no difference',
};

/** All crossings of a currency in one sentence. */
export function crossingsText(
  all: readonly BenchCrossing[],
  always: Always,
  currency: Currency,
  name: string,
  over: SweepOver,
): string {
  const [first] = all;
  if (first === undefined) return `${labelOf(currency)}: ${alwaysTexts[always](name, wordOf[over])}.`;
  if (all.length === 1) return `${first.text}.`;
  return `${labelOf(currency)}: ${name} wins ${winningStretches(all, over)}.`;
}

function winningStretches(all: readonly BenchCrossing[], over: SweepOver): string {
  const unit = unitOf[over];
  const stretches = all.flatMap(({ at, winsBelow }, i) => {
    const next = all[i + 1];
    const below = i === 0 && winsBelow ? [`below ${formatQuantity(at, unit)}`] : [];
    if (winsBelow) return below;
    return [
      ...below,
      next === undefined ? `above ${formatQuantity(at, unit)}` : `at ${formatRange(at, next.at, unit)}`,
    ];
  });
  return stretches.join(' and ');
}
