import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkEnvelope } from '../../src/project/envelope/checkEnvelope';
import { textsFromWords, textsToWords } from '../../src/project/envelope/envelopeAddress';
import { envelopeMarkdown, plainMarkdown } from '../../src/project/envelope/envelopeMarkdown';
import {
  envelopeFieldIds,
  envelopeOptions,
  type EnvelopeFieldId,
  type EnvelopeTexts,
} from '../../src/project/envelope/envelopeTexts';
import { readEnvelope } from '../../src/project/envelope/readEnvelope';
import { readScribble } from '../../src/project/envelope/readScribble';

/** Words, units and signs that a scribble is made of, and some that break things. */
const scraps = [
  ...['16', '0.7', '0,7', '1,200', '25', '1e3', '1e999', '.5', '7x19', '-', '20-40', '½', '1/4', '000'],
  ...[' ', ' mm', ' m', ' m/s', ' kn', ' W', ' hp', ' N', ' m2', '°', ' °C', ' kg/m3', "'", '"', 'kW', ' PS'],
  ...[
    'posts',
    'wire',
    'sphere',
    'plate',
    'each',
    'in all',
    'Cd',
    'CdA',
    'rho',
    'dia',
    'long',
    'radius',
    'r = ',
  ],
  ...[
    'AWS',
    'TWA',
    'apparent',
    'true wind',
    'boat speed',
    'air power',
    'boat pays',
    'on deck',
    'two',
    '×',
    ' x ',
  ],
  ...[
    '=',
    ':',
    ', ',
    '; ',
    '\n',
    '\r\n',
    '• ',
    '(',
    ')',
    '<script>',
    '&amp;',
    '|',
    '`',
    '\u0000',
    '\ud800',
    '\u202e',
    '🌬',
  ],
] as const;

const scribble = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.array(fc.constantFrom(...scraps), { maxLength: 14 }).map((parts) => parts.join('')),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 24 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 24 }) },
);

function joined(text: string): string {
  return readScribble(text)
    .pieces.map((piece) => piece.text)
    .join('');
}

describe('any text as a scribble', () => {
  it('is read without an error and accounted for to the last character, 100 000 times', () => {
    fc.assert(
      fc.property(scribble, (text) => {
        if (joined(text) !== text) throw new Error(`lost something of ${JSON.stringify(text)}`);
      }),
      { numRuns: 100_000 },
    );
  }, 120_000);

  it('fills no field without a piece that says so, and every piece stands in its field', () => {
    fc.assert(
      fc.property(scribble, (text) => {
        const { texts, pieces } = readScribble(text);
        const understood = pieces.filter((piece) => piece.kind === 'understood');
        expect(new Set(understood.map(({ fieldId }) => fieldId))).toEqual(new Set(Object.keys(texts)));
        for (const { fieldId, value } of understood) expect(texts[fieldId]).toBe(value);
      }),
      { numRuns: 5000 },
    );
  });

  it('gives a check and Markdown without an error', () => {
    fc.assert(
      fc.property(scribble, (text) => {
        const { texts } = readScribble(text);
        expect(envelopeMarkdown(texts, checkEnvelope(readEnvelope(texts).numbers))).toContain(
          '# Envelope check',
        );
      }),
      { numRuns: 3000 },
    );
  });

  it('takes a time that grows with its length alone', () => {
    const started = performance.now();
    for (const part of ['16 x ', 'apparent ', "1'234", 'a', '\n', '25 mm x ', '((((', '0.7 m long '])
      readScribble(part.repeat(5000));
    expect(performance.now() - started).toBeLessThan(3000);
  });
});

const anyText = fc.string({ unit: 'binary', maxLength: 60 });
const anyTexts: fc.Arbitrary<EnvelopeTexts> = fc
  .array(
    fc.tuple(
      fc.constantFrom(...envelopeFieldIds),
      anyText.filter((text) => text !== ''),
    ),
  )
  .map((entries) => Object.fromEntries(entries) as Partial<Record<EnvelopeFieldId, string>>);

/** Fields as somebody fills them, sensible or not. */
const numberTexts = fc.oneof(
  anyText,
  fc.constantFrom(
    '0',
    '1',
    '16',
    '0.7 m',
    '25 mm',
    '12 m/s',
    '1e300',
    '-5',
    '1e-300 m',
    '340 m/s',
    '1000 m',
    '1e-5 m',
  ),
);
const filled: fc.Arbitrary<EnvelopeTexts> = fc
  .tuple(
    fc.array(fc.tuple(fc.constantFrom(...envelopeFieldIds), numberTexts)),
    fc.constantFrom(...envelopeOptions.shape.map(({ id }) => id)),
  )
  .map(([entries, shape]) => ({ ...Object.fromEntries(entries), shape }));

describe('any texts in the fields', () => {
  it('come back from an address as they went in', () => {
    fc.assert(
      fc.property(anyTexts, (texts) => {
        expect(textsFromWords(textsToWords(texts))).toEqual(texts);
      }),
      { numRuns: 2000 },
    );
  });

  it('give a check whose numbers are all numbers', () => {
    fc.assert(
      fc.property(filled, (texts) => {
        const check = checkEnvelope(readEnvelope(texts).numbers);
        expect(JSON.stringify(check)).toBe(JSON.stringify(check, neverNaN));
      }),
      { numRuns: 3000 },
    );
  });
});

/** JSON writes NaN as null, which would pass for "not known". */
function neverNaN(key: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${key} is ${value}`);
  return value;
}

describe('any text in the Markdown', () => {
  it('is one line in which no sign that Markdown or HTML reads stands unescaped', () => {
    fc.assert(
      fc.property(fc.oneof(anyText, scribble), (text) => {
        const line = plainMarkdown(text);
        expect(line).not.toMatch(/[\n\r<>]/);
        expect(line.replace(/\\[\\`*_{}[\]#|~$=+.)-]/g, '')).not.toMatch(/[\\`*_{}[\]#|~$]/);
        expect(line).not.toMatch(/:\/\/|^[-+=]|^\d+[.)](?:\s|$)/);
      }),
      { numRuns: 5000 },
    );
  });
});
