import { describe, expect, it } from 'vitest';
import { layTable, wrap } from '../../src/terminal/textTable';

describe('a text table', () => {
  it('aligns text left and numbers right, whatever the alphabet', () => {
    const lines = layTable(
      [
        { head: 'name', align: 'left', most: 6 },
        { head: 'W', align: 'right' },
        { head: 'note', align: 'left' },
      ],
      [
        { kind: 'cells', cells: ['bar', '12.5', 'x'] },
        { kind: 'cells', cells: ['帆', '−3.0', ''] },
        { kind: 'rule' },
        { kind: 'cells', cells: ['a\u001b[31m long name', '9.5', 'y'] },
      ],
    );
    expect(lines).toEqual([
      'name       W  note',
      '──────────────────',
      'bar     12.5  x',
      '帆      −3.0',
      '──────────────────',
      'a lon…   9.5  y',
    ]);
  });

  it('breaks paragraphs between words and keeps every word', () => {
    const text = Array.from({ length: 40 }, (_, i) => `word${i}`).join(' ');
    const lines = wrap(text);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(110);
    expect(lines.map((line) => line.trim()).join(' ')).toBe(text);
    expect(wrap('x'.repeat(300))).toEqual(['x'.repeat(300)]);
  });
});
