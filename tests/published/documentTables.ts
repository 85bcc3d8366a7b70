/** One row of a table in Markdown. */
function tableRow(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

/** A table in Markdown. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  return [tableRow(head), tableRow(head.map(() => '---')), ...rows.map(tableRow)];
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const upper = sorted[Math.floor(middle)] ?? NaN;
  return Number.isInteger(middle) ? ((sorted[middle - 1] ?? NaN) + upper) / 2 : upper;
}
