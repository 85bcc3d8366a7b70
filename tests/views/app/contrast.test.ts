import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

type Tokens = ReadonlyMap<string, string>;

/** The tokens of each theme as the style sheet writes them down; dark stands there twice. */
function themes(): Record<string, Tokens> {
  const sheet = readFileSync('src/app/tokens.css', 'utf8');
  const blocks = [...sheet.matchAll(/(:root[^{]*)\{([^}]*)\}/g)].map(([, selector = '', body = '']) => ({
    selector: selector.trim(),
    tokens: new Map(
      [...body.matchAll(/--([a-z]+): (#[0-9a-f]{6});/g)].map(([, name = '', colour = '']) => [name, colour]),
    ),
  }));
  const of = (selector: string): Tokens => {
    const found = blocks.find((block) => block.selector === selector);
    if (found === undefined) throw new Error(`no block ${selector}`);
    return found.tokens;
  };
  return {
    light: of(':root'),
    'dark by the system': of(":root:not([data-theme='light'])"),
    'dark by choice': of(":root[data-theme='dark']"),
  };
}

/** Relative luminance, WCAG 2.2. */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((start) => {
    const share = parseInt(colour.slice(start, start + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(tokens: Tokens, one: string, other: string): number {
  const [light = 0, dark = 0] = [one, other]
    .map((name) => luminance(tokens.get(name) ?? ''))
    .sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

describe.each(Object.entries(themes()))('the %s theme', (_, tokens) => {
  it.each(['ink', 'muted', 'cost', 'saving', 'outside'])(
    'sets text in %s with at least 4.5 to 1 on paper and tint',
    (name) => {
      expect(contrast(tokens, name, 'paper')).toBeGreaterThanOrEqual(4.5);
      // The dark "outside" on the selected row is the table's closest pair.
      expect(contrast(tokens, name, 'tint')).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each(['rule', 'focus'])('draws lines in %s with at least 3 to 1 on paper', (name) => {
    expect(contrast(tokens, name, 'paper')).toBeGreaterThanOrEqual(3);
  });
});

it('has the same dark tokens by the system and by choice', () => {
  const { 'dark by the system': bySystem, 'dark by choice': byChoice } = themes();
  expect([...(bySystem ?? [])]).toEqual([...(byChoice ?? [])]);
});

it('knows that black on white is 21 to 1', () => {
  const tokens = new Map([
    ['a', '#000000'],
    ['b', '#ffffff'],
  ]);
  expect(contrast(tokens, 'a', 'b')).toBeCloseTo(21, 10);
});
