import { describe, expect, it } from 'vitest';
import { ontoSurvey } from './ontoSurvey';
import type { FaultSurvey, FileSurvey, Finding } from './survey';

function counts(file: string, hash: string, tried: number, noticed: number): FileSurvey {
  const triedBy = tried === 0 ? null : hash === 'old' ? '2026-11-26' : '2026-11-27';
  return { file, hash, triedBy, constants: 20, excluded: 4, tried, noticed };
}

function finding(file: string, from: number, noticedBy: string | null, triedOn = '2026-11-27'): Finding {
  return { file, line: 1, from, text: '1', context: `const at${from} = 1;`, noticedBy, triedOn };
}

const test = 'tests/properties/some.test.ts';
const survivors = [
  finding('a.ts', 10, null, '2026-11-26'),
  finding('a.ts', 30, null, '2026-11-26'),
  finding('b.ts', 5, null, '2026-11-26'),
];
const kept: FaultSurvey = {
  files: [
    { ...counts('a.ts', 'old', 6, 4), fresh: { tried: 3, noticed: 2 } },
    counts('b.ts', 'old', 2, 1),
    counts('gone.ts', 'old', 3, 2),
  ],
  survivors: [...survivors, finding('gone.ts', 7, null)],
};

/** A survey of what was tried now, of files with these hashes. */
function now(hashes: Readonly<Record<string, string>>, tried: readonly Finding[]): FaultSurvey {
  const files = Object.entries(hashes).map(([file, hash]) => {
    const own = tried.filter((found) => found.file === file);
    return counts(file, hash, own.length, own.filter(({ noticedBy }) => noticedBy !== null).length);
  });
  return { files, survivors: tried.filter(({ noticedBy }) => noticedBy === null) };
}

function onto(hashes: Readonly<Record<string, string>>, tried: readonly Finding[]): FaultSurvey {
  return ontoSurvey(kept, now(hashes, tried), tried);
}

describe('a survey laid onto the one that is kept', () => {
  it('keeps counts, fresh ones too, hash and survivors of a file of which nothing was tried, and drops what is no more', () => {
    const { files, survivors: left } = onto({ 'a.ts': 'new', 'b.ts': 'old' }, []);
    expect(files).toEqual(kept.files.slice(0, 2));
    expect(left).toEqual(survivors);
  });

  it('takes the counts and survivors of a changed file that was tried anew in place of the kept ones', () => {
    const tried = [finding('a.ts', 11, null), finding('a.ts', 12, test)];
    const merged = onto({ 'a.ts': 'new', 'b.ts': 'old' }, tried);
    expect(merged.files).toEqual([counts('a.ts', 'new', 2, 1), counts('b.ts', 'old', 2, 1)]);
    expect(merged.survivors).toEqual([tried[0], survivors[2]]);
  });

  it('takes a survivor away that was noticed this time, and counts no try twice', () => {
    const hashes = { 'a.ts': 'old', 'b.ts': 'old' };
    const tried = [finding('a.ts', 10, test), finding('b.ts', 5, null)];
    const merged = onto(hashes, tried);
    expect(merged.files.map((file) => [file.tried, file.noticed])).toEqual([
      [6, 5],
      [2, 1],
    ]);
    expect(merged.survivors).toEqual([survivors[1], tried[1]]);
    expect(ontoSurvey(merged, now(hashes, tried), tried)).toEqual(merged);
  });

  it('takes the new counts of a file of the same text of which as much was tried', () => {
    const tried = [finding('b.ts', 6, test), finding('b.ts', 7, test)];
    const merged = onto({ 'b.ts': 'old' }, tried);
    expect(merged).toEqual({ files: [counts('b.ts', 'old', 2, 2)], survivors: [] });
  });

  it('lists a file that is not kept', () => {
    const merged = onto({ 'c.ts': 'new' }, [finding('c.ts', 1, test)]);
    expect(merged).toEqual({ files: [counts('c.ts', 'new', 1, 1)], survivors: [] });
  });
});
