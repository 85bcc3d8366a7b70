import type { Measured } from './measure';

/** The smallest of the values that the given share of them does not exceed. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? NaN;
}

const columns = ['median', 'p95', 'thread', 'script', 'share', 'style', 'layout', 'rest'] as const;
const columnWidth = 8;
const nameWidth = 40;

export const tableHead = [
  `${'painted ledger, ms'.padStart(nameWidth + 2 * columnWidth)}   main thread, ms of its own time per input`,
  ' '.repeat(nameWidth) + columns.map((column) => column.padStart(columnWidth)).join(''),
].join('\n');

/** One build in one case. `rest` is painting, layering and events. */
export function resultLine(caseName: string, { name, paintedMs, thread }: Measured): string {
  const { allMs, scriptMs, styleMs, layoutMs } = thread;
  const restMs = allMs - scriptMs - styleMs - layoutMs;
  const figures = [
    quantile(paintedMs, 0.5).toFixed(1),
    quantile(paintedMs, 0.95).toFixed(1),
    allMs.toFixed(1),
    scriptMs.toFixed(1),
    `${Math.round((100 * scriptMs) / allMs)} %`,
    styleMs.toFixed(1),
    layoutMs.toFixed(1),
    restMs.toFixed(1),
  ];
  return (
    `${caseName}, ${name}`.padEnd(nameWidth) + figures.map((text) => text.padStart(columnWidth)).join('')
  );
}
