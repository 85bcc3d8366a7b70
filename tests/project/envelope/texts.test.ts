import { describe, expect, it } from 'vitest';
import { checkEnvelope } from '../../../src/project/envelope/checkEnvelope';
import { textsFromWords, textsToWords } from '../../../src/project/envelope/envelopeAddress';
import { envelopeMarkdown } from '../../../src/project/envelope/envelopeMarkdown';
import type { EnvelopeTexts } from '../../../src/project/envelope/envelopeTexts';
import { readEnvelope } from '../../../src/project/envelope/readEnvelope';

describe('an address', () => {
  it('holds the texts as a query', () => {
    expect(textsToWords({ count: '16', speed: '12 m/s', power: '' })).toBe('speed=12+m%2Fs&count=16');
  });

  it('made by other means is read as URLSearchParams reads it', () => {
    const words = new URLSearchParams({ speed: '12 m/s + 1 & ½', width: '25 "mm"' }).toString();
    expect(textsFromWords(`?${words}`)).toEqual({ speed: '12 m/s + 1 & ½', width: '25 "mm"' });
    expect(Object.fromEntries(new URLSearchParams(textsToWords({ speed: '1 + 1 & ½' })))).toEqual({
      speed: '1 + 1 & ½',
    });
  });

  it('leaves out what it does not know and what is broken, and keeps the rest', () => {
    expect(
      textsFromWords('colour=red&speed=12+kn&power=%E0%A4%A&=x&count&__proto__=1&force=1&force=2'),
    ).toEqual({
      speed: '12 kn',
      force: '1',
    });
  });

  it('is bounded, and cuts no character in half', () => {
    const { speed } = textsFromWords(`speed=${'a'.repeat(199)}${encodeURIComponent('🌬')}`);
    expect(speed).toBe('a'.repeat(199));
    expect(textsToWords({ speed: 'a'.repeat(1000) })).toHaveLength('speed='.length + 200);
  });

  it('puts the replacement character for half of a character', () => {
    expect(textsFromWords(textsToWords({ speed: 'a\ud800b' }))).toEqual({ speed: 'a\ufffdb' });
  });
});

describe('a field', () => {
  const problem = (texts: EnvelopeTexts) => readEnvelope(texts).problems;

  it('that cannot be read leaves the others in force', () => {
    const { numbers, problems } = readEnvelope({ speed: 'fast', count: '16', width: '25 mm' });
    expect(numbers.speed).toBeNull();
    expect([numbers.count?.valueSi, numbers.width?.valueSi]).toEqual([16, 0.025]);
    expect(Object.keys(problems)).toEqual(['speed']);
  });

  it('with a speed or a size asks for its unit, because a guess there is the commonest slip', () => {
    expect(problem({ speed: '12' }).speed).toBe('Say which unit: 12 m/s, 12 kn or 12 km/h.');
    expect(problem({ width: '25' }).width).toContain('25 mm');
    expect(problem({ density: '1.2', force: '24', power: '240', area: '0.8' })).toEqual({});
  });

  it('holds whole counts, choices of its list and numbers within reach', () => {
    expect(problem({ count: '1.5' }).count).toContain('whole number');
    expect(problem({ shape: 'banana' }).shape).toContain('Choose one of the list');
    expect(problem({ speed: '0 m/s' }).speed).toContain('Type something from');
    expect(problem({ windAngle: '190°' }).windAngle).toContain('180°');
    expect(problem({ power: '5 N' }).power).toContain('a force');
  });

  it('keeps how far its last digit leaves it open', () => {
    const { power } = readEnvelope({ power: '170 W' }).numbers;
    expect([power?.lowSi, power?.highSi]).toEqual([165, 175]);
  });
});

describe('Markdown', () => {
  const markdown = (texts: EnvelopeTexts) =>
    envelopeMarkdown(texts, checkEnvelope(readEnvelope(texts).numbers));

  it('holds what was written, each step, what does not follow and the slip', () => {
    const text = markdown({
      density: '1.2',
      speed: '12 kn',
      coefficient: '0.5',
      area: '0.8 m2',
      force: '34.6 N',
    });
    for (const part of [
      '- Wind speed: 12 kn',
      '| Force | F = q · CdA =',
      'does not follow |',
      'knots taken for m/s',
    ])
      expect(text).toContain(part);
  });

  it('says at its head, and once, what a handbook makes of the coefficient', () => {
    const pole = { speed: '10 m/s', shape: 'roundBar', width: '100 mm', length: '3 m' };
    for (const [coefficient, said] of [
      ['0.5', /is low by about two/g],
      ['0.95', /lies within the handbook’s range/g],
    ] as const) {
      const text = markdown({ ...pole, coefficient });
      expect(text.match(said)).toHaveLength(1);
      expect(text.slice(0, text.indexOf('## '))).toMatch(new RegExp(said.source));
    }
  });

  it('of hostile text is harmless', () => {
    const hostile =
      '1 <img src=x onerror=alert(1)> [a](javascript:x) `b` | c\n# d https://e.example www.f.example g@h.example';
    const text = markdown({ speed: hostile, count: '- [x] <b>' });
    expect(text).not.toMatch(/<[a-z]/i);
    expect(text).not.toMatch(/[^\\]\]\(/);
    expect(text).not.toMatch(/https?:\/\//);
    expect(text).not.toMatch(/www\.\w/);
    expect(text).not.toMatch(/\w@\w/);
    expect(text.split('\n').filter((line) => line.startsWith('# '))).toEqual(['# Envelope check']);
    expect(text).toContain('\\`b\\` \\| c');
  });
});
