import fc from 'fast-check';
import { expect, it } from 'vitest';
import { safeJson, safeLine } from '../../src/terminal/safeText';

it.each([
  ['\u001b[31mred\u001b[0m', 'red'],
  ['\u001b]0;title\u0007after', 'after'],
  ['\u001b]8;;http://x\u001b\\link\u001b]8;;\u001b\\', 'link'],
  ['\u009b2Jcleared', 'cleared'],
  ['\u001bcreset', 'reset'],
  ['two\r\nlines\tand\u2028more', 'two lines and more'],
  ['left\u202eright\u2066\u200b', 'leftright'],
  ['null\u0000bell\u0007', 'nullbell'],
  ['Mât de flèche, 帆, 0.5 m², −3', 'Mât de flèche, 帆, 0.5 m², −3'],
])('%j is printed as %j', (text, printed) => {
  expect(safeLine(text)).toBe(printed);
});

const nasty = fc.string({
  unit: fc.constantFrom('\u001b', '[', ']', '\u009b', 'm', ';', '\u0007', 'a', '\n', '\u202e', '\ud800'),
});

it('no text whatsoever brings a control character onto the screen', () => {
  fc.assert(
    fc.property(fc.oneof(nasty, fc.string({ unit: 'binary' })), (text) => {
      expect(safeLine(text)).not.toMatch(/[\p{C}\p{Zl}\p{Zp}]/u);
    }),
  );
});

it('JSON says the same and holds no bare control character but its own line breaks', () => {
  fc.assert(
    fc.property(fc.oneof(nasty, fc.string({ unit: 'binary' })), (text) => {
      const json = safeJson({ text });
      expect(JSON.parse(json)).toEqual({ text });
      expect(json.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
    }),
  );
});
