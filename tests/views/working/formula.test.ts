import { describe, expect, it } from 'vitest';
import { memberQuantities } from '../../../src/physics/fitting/memberTrace';
import { outcomeQuantities } from '../../../src/physics/fitting/outcome';
import {
  formulaPieces,
  withNumbers,
  type FormulaPiece,
  type SymbolValue,
} from '../../../src/views/working/formula';
import { workingLine } from '../../../src/views/working/workingLine';

function text(pieces: readonly FormulaPiece[] | null): string {
  return (pieces ?? []).map(({ text: own, sub = '', sup = '' }) => own + sub + sup).join('');
}

const known = new Map<string, SymbolValue>([
  ['u_n', { value: 11, unit: 'm/s' }],
  ['d', { value: 0.095, unit: 'm' }],
  ['nu', { value: 1.46e-5, unit: 'm2/s' }],
  ['a', { value: Math.PI / 6, unit: 'rad' }],
  ['e', { value: 0.8, unit: '1' }],
  ['u', { value: 13, unit: 'm/s' }],
  ['rho', { value: 1.225, unit: 'kg/m3' }],
  ['F_X', { value: -82.7, unit: 'N' }],
  ['V', { value: 3.76, unit: 'm/s' }],
  ['P_a', { value: 376.4, unit: 'W', decimals: 0 }],
  ['P_t', { value: 311.2, unit: 'W', decimals: 0 }],
  ['alpha', { value: 0.14, unit: '1' }],
  ['z_w', { value: 4, unit: 'm' }],
  ['W_10', { value: 10, unit: 'm/s' }],
]);

describe('an incidence that is none to a tenth of a degree', () => {
  const degree = Math.PI / 180;

  it('stands as none in a line of the working, and a larger one to three figures', () => {
    const lineText = (valueDeg: number): string | undefined =>
      workingLine('incidenceRad', memberQuantities.incidenceRad, [{ value: valueDeg * degree }], [])?.cells[0]
        ?.text;
    expect(lineText(-0.00107)).toBe('0');
    expect(lineText(0.049)).toBe('0');
    expect(lineText(0.051)).toBe('0.0510');
    expect(lineText(-12.34)).toBe('−12.3');
  });

  it('stands as none in a formula, and no other angle does', () => {
    const near = (symbol: string): string =>
      text(withNumbers(`sin ${symbol}`, new Map([[symbol, { value: -0.04 * degree, unit: 'rad' }]])));
    expect(near('a_i')).toBe('sin 0°');
    expect(near('a')).toBe('sin (−0.0400°)');
  });
});

describe('an equation with its numbers', () => {
  it.each([
    ['u_n d / nu', '11.0 × 0.0950 / 1.46 × 10−5'],
    ['e u sin a', '0.800 × 13.0 × sin 30.0°'],
    ['rho (e u)^2 / 2', '1.23 × (0.800 × 13.0)2 / 2'],
    ['-F_X V', '−(−82.7) × 3.76'],
    ['sum F . w = P_a - P_t', '376 − 311'],
    ['W_10 (z_w / 10)^alpha', '10.0 × (4.00 / 10)0.140'],
  ])('%s', (equation, expected) => {
    expect(text(withNumbers(equation, known))).toBe(expected);
  });

  it('has none where a symbol is a vector or a sum along the bar', () => {
    expect(withNumbers('sum F . u', known)).toBeNull();
    expect(withNumbers('|w - v|', known)).toBeNull();
    expect(withNumbers(memberQuantities.forceTrackXN.equation, known)).toBeNull();
    expect(withNumbers(outcomeQuantities.heelingMomentNm.equation, known)).toBeNull();
  });
});

describe('an equation in type', () => {
  it('sets variables in italics with their index, functions and words upright', () => {
    expect(formulaPieces('e u_n sin a').filter(({ style }) => style === 'italic')).toEqual([
      { text: 'e', style: 'italic' },
      { text: 'u', style: 'italic', sub: 'n' },
      { text: 'a', style: 'italic' },
    ]);
    expect(text(formulaPieces('sum rho x nu^2'))).toBe('Σ ρ × ν2');
  });

  it('loses no sign of any table', () => {
    for (const quantity of [...Object.values(memberQuantities), ...Object.values(outcomeQuantities)]) {
      const equation = 'equation' in quantity ? quantity.equation : quantity.symbol;
      const letters = (value: string): number => value.replace(/sum|rho|nu|kappa|[^\p{L}\d]/gu, '').length;
      const set = text(formulaPieces(equation)).replace(/[Σρνκ×·]/g, '');
      expect(letters(set)).toBe(letters(equation.replace(/ x /g, ' ')));
    }
  });
});
