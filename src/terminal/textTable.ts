import { safeLine } from './safeText';

export interface Column {
  readonly head: string;
  readonly align: 'left' | 'right';
  /** Longest text, in places of the screen; longer ones end in an ellipsis. */
  readonly most?: number;
}

export type TableLine =
  { readonly kind: 'cells'; readonly cells: readonly string[] } | { readonly kind: 'rule' };

const gap = '  ';
const characters = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** East Asian wide and full-width characters and pictures take two places. */
const wide =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}\p{Emoji_Presentation}]/u;

function widthOf(text: string): number {
  let width = 0;
  for (const { segment } of characters.segment(text)) width += wide.test(segment) ? 2 : 1;
  return width;
}

function cut(text: string, most: number): string {
  if (widthOf(text) <= most) return text;
  let kept = '';
  for (const { segment } of characters.segment(text)) {
    if (widthOf(kept + segment) > most - 1) break;
    kept += segment;
  }
  return `${kept}…`;
}

/** Lines of a table: one head, cells padded to their column; right-aligned numbers of one column share their decimals. */
export function layTable(columns: readonly Column[], lines: readonly TableLine[]): string[] {
  const cells = lines.map((line) =>
    line.kind === 'rule'
      ? null
      : columns.map(({ most }, i) => cut(safeLine(line.cells[i] ?? ''), most ?? Infinity)),
  );
  const widths = columns.map(({ head }, i) =>
    cells.reduce((most, row) => Math.max(most, widthOf(row?.[i] ?? '')), widthOf(head)),
  );
  const padded = (row: readonly string[]): string =>
    columns
      .map(({ align }, i) => pad(row[i] ?? '', widths[i] ?? 0, align))
      .join(gap)
      .trimEnd();
  const rule = '─'.repeat(widths.reduce((sum, width) => sum + width + gap.length, -gap.length));
  return [
    padded(columns.map(({ head }) => head)),
    rule,
    ...cells.map((row) => (row === null ? rule : padded(row))),
  ];
}

function pad(text: string, width: number, align: Column['align']): string {
  const blanks = ' '.repeat(Math.max(width - widthOf(text), 0));
  return align === 'left' ? text + blanks : blanks + text;
}

const textWidth = 110;

/** A paragraph broken between words; later lines are indented. A word longer than the line keeps its own. */
export function wrap(text: string, indent = '  '): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of safeLine(text).split(' ')) {
    if (line.trim() !== '' && widthOf(line) + 1 + widthOf(word) > textWidth) {
      lines.push(line);
      line = indent + word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
