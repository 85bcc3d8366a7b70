import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchSetting } from '../../src/project/bench/benchTypes';
import { benchFromWords, benchToWords } from '../../src/project/bench/benchWords';
import { candidateMaterials, mostCandidates, type Candidate } from '../../src/project/bench/candidates';
import { between } from './arbitraries';

const number = between(-1e12, 1e12).map((value) => value + 0);
const id = fc
  .stringMatching(/^[A-Za-z0-9_-]{1,40}$/)
  .filter((text) => !['__proto__', 'constructor', 'prototype'].includes(text));
const name = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 60 })
  .filter(
    (text) =>
      text.trim() !== '' &&
      text.length <= 200 &&
      !/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/u.test(text),
  );
const direction = fc.oneof(
  fc.record({ kind: fc.constant('fixed' as const), angleDeg: number }),
  fc.record({
    kind: fc.constant('turning' as const),
    residualDeg: number,
    pieces: fc.integer({ min: 1, max: 50 }),
  }),
);
const mass = fc.oneof(
  fc.record({ kind: fc.constant('none' as const) }),
  fc.record({ kind: fc.constant('skin' as const), arealDensityKgM2: number }),
  fc.record({
    kind: fc.constant('wall' as const),
    material: fc.constantFrom(...candidateMaterials.map((one) => one.id)),
    wallM: number,
  }),
);
const parts = { id, name, massKg: fc.option(number), cost: number };
const section = { ...parts, direction, mass, chordM: number, thicknessM: number };
const candidate: fc.Arbitrary<Candidate> = fc.oneof(
  fc.record({ kind: fc.constant('bare' as const), ...parts }),
  fc.record({ kind: fc.constant('thinnerRound' as const), ...parts, diameterM: number, mass }),
  fc.record({ kind: fc.constantFrom('ellipse' as const, 'section' as const), ...section }),
  fc.record({
    kind: fc.constant('fairingRound' as const),
    ...parts,
    direction,
    mass,
    skinM: number,
    clearanceM: number,
    chordOverThickness: number,
  }),
);
const end = fc.constantFrom('free' as const, 'surface' as const, 'joined' as const);
const typed = fc.record({
  diameterM: number,
  lengthM: number,
  footAboveDeckM: number,
  leanAftDeg: number,
  leanOutDeg: number,
  ends: fc.tuple(end, end),
});
const setting: fc.Arbitrary<BenchSetting> = fc.record({
  memberId: fc.option(id),
  typed: fc.option(typed),
  candidates: fc.uniqueArray(candidate, { maxLength: mostCandidates, selector: (one) => one.id }),
});

describe('the bench in an address', () => {
  it('comes back as it was', () => {
    fc.assert(
      fc.property(setting, (before) => {
        expect(benchFromWords(benchToWords(before))).toEqual(before);
      }),
      { numRuns: 300 },
    );
  });

  it('never throws, whatever the words, and holds at most six candidates', () => {
    const words = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.string({
        unit: fc.constantFrom(
          'c=',
          'kind:',
          "'bare",
          ';',
          ':',
          '&',
          '.',
          '__proto__',
          'ends',
          '0',
          '%',
          'member=',
          'typed=',
        ),
        maxLength: 60,
      }),
    );
    fc.assert(
      fc.property(words, (text) => {
        const { candidates, memberId } = benchFromWords(text);
        expect(candidates.length).toBeLessThanOrEqual(mostCandidates);
        expect(memberId === null || /^[A-Za-z0-9_-]{1,40}$/.test(memberId)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('leaves out a seventh candidate and one whose id is taken', () => {
    const bare = (own: string): Candidate => ({ id: own, name: own, kind: 'bare', massKg: null, cost: 0 });
    const seven = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map(bare);
    const wordsOf = (candidates: readonly Candidate[]) =>
      benchToWords({ memberId: null, typed: null, candidates });
    const idsIn = (words: string) => benchFromWords(words).candidates.map((one) => one.id);
    expect(wordsOf(seven)).toBe(wordsOf(seven.slice(0, mostCandidates)));
    expect(idsIn(wordsOf(seven))).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
    // An address that somebody put together holds as many as they like.
    expect(idsIn(seven.map((one) => wordsOf([one])).join('&'))).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
    const twice = wordsOf([bare('a'), bare('a')]);
    expect(benchFromWords(twice).candidates).toHaveLength(1);
  });
});
