import { doubtGroup } from '../../physics/doubt/doubtSource';
import type { DoubtChange } from '../../physics/doubt/doubtChange';
import type { ProjectFitting } from '../../project/file/schema';
import { doubtLabel } from '../../project/wording/doubtLabel';
import { formatValue } from '../../units/print';

/** More are in the working. */
const mostSources = 3;

/**
 * The largest sources of a row's doubt in track power by name: "coefficient, round bar, crisis +90/−210; diameter ±4".
 * Wind and density stand apart, as in the spread; a source that would print as zero is left out.
 * @param fittings whose names are said: needed where several fittings are summed.
 */
export function largestDoubts(
  doubts: readonly DoubtChange[],
  decimals: number,
  fittings: readonly ProjectFitting[],
): string {
  return doubts
    .filter(({ id }) => doubtGroup(id) === 'item')
    .map((doubt) => ({ id: doubt.id, ...endsOf(doubt) }))
    .sort((a, b) => sizeOf(b) - sizeOf(a))
    .slice(0, mostSources)
    .flatMap(({ id, ...ends }) => {
      const text = endsText(ends, decimals);
      return text === '' ? [] : [`${doubtLabel(id, fittings)} ${text}`];
    })
    .join('; ');
}

interface Ends {
  readonly aboveW: number;
  readonly belowW: number;
}

/** How far a source moves the track power upwards and downwards; either of its states may do either. */
function endsOf({ up, down }: DoubtChange): Ends {
  return {
    aboveW: Math.max(up.trackPowerW, down.trackPowerW, 0),
    belowW: Math.max(-up.trackPowerW, -down.trackPowerW, 0),
  };
}

function sizeOf({ aboveW, belowW }: Ends): number {
  return Math.max(aboveW, belowW);
}

function endsText({ aboveW, belowW }: Ends, decimals: number): string {
  const above = formatValue(aboveW, 'W', { decimals });
  const below = formatValue(belowW, 'W', { decimals });
  if (above === below) return isZero(above) ? '' : `±${above}`;
  const parts = [isZero(above) ? '' : `+${above}`, isZero(below) ? '' : `\u2212${below}`];
  return parts.filter((part) => part !== '').join('/');
}

function isZero(text: string): boolean {
  return !/[1-9]/.test(text);
}
