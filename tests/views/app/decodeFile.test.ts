import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeFile } from '../../../src/app/decodeFile';

function refusal(...bytes: readonly number[]): string {
  const decoded = decodeFile(Uint8Array.from(bytes));
  return decoded.ok ? '' : decoded.message;
}

describe('the bytes of a file', () => {
  it('of any text are that text again, with its byte order mark', () => {
    fc.assert(
      fc.property(fc.boolean(), fc.string({ unit: 'grapheme' }), (isMarked, words) => {
        const text = `${isMarked ? '\uFEFF' : ''}{"name":"${words}"}`;
        expect(decodeFile(new TextEncoder().encode(text))).toEqual({ ok: true, text });
      }),
    );
  });

  it('that are none at all are an empty text', () => {
    expect(decodeFile(new Uint8Array())).toEqual({ ok: true, text: '' });
  });

  it('of UTF-16 are known with a mark and without, in either order', () => {
    for (const bytes of [
      [0xff, 0xfe, 0x7b, 0],
      [0xfe, 0xff, 0, 0x7b],
      [0x7b, 0, 0x7d, 0],
      [0, 0x7b, 0, 0x7d],
    ]) {
      expect(refusal(...bytes)).toMatch(/^the file is UTF-16 text, not UTF-8; save it again as UTF-8$/);
    }
  });

  it('of Latin-1 are refused with the line of the first that is not UTF-8', () => {
    const lineFeed = 10;
    expect(refusal(0x7b, lineFeed, 0x61, 0xe4, lineFeed, 0x7d)).toMatch(/not UTF-8 text: line 2 holds/);
    expect(refusal(0x7b, 0x7d, lineFeed, lineFeed, 0xe4)).toMatch(/line 3 holds/);
  });

  it('cut off in the middle of a character are refused on the last line', () => {
    expect(refusal(0x7b, 10, 0xc3)).toMatch(/line 2 holds/);
  });
});
