import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blankProject } from '../../../src/project/file/blankParts';
import { openProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project } from '../../../src/project/file/schema';
import { arbitraryProject } from './arbitraryProject';

function saved(project: Project): string {
  const result = saveProject(project);
  if (!result.ok) throw new Error(JSON.stringify(result.errors));
  return result.text;
}

function opened(text: string): Project {
  const result = openProject(text);
  if (!result.ok) throw new Error(JSON.stringify(result.errors));
  return result.project;
}

/** The same content with every object's keys the other way round. */
function turnedRound(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(turnedRound);
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, part]) => [key, turnedRound(part)]),
  );
}

describe('saving and opening', () => {
  it('gives the same project back, and the same bytes at the second save', () => {
    fc.assert(
      fc.property(arbitraryProject, (project) => {
        const text = saved(project);
        const again = opened(text);
        expect(again).toEqual(project);
        expect(saved(again)).toBe(text);
      }),
      { numRuns: 200 },
    );
  });

  it('writes the same bytes whatever order the keys came in', () => {
    fc.assert(
      fc.property(arbitraryProject, (project) => {
        expect(saved(turnedRound(project) as Project)).toBe(saved(project));
      }),
      { numRuns: 50 },
    );
  });

  it('writes two spaces of indentation and a line end', () => {
    const text = saved(blankProject());
    expect(text.startsWith('{\n  "format": "windtoll-project",\n  "version": 2,\n')).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('opens a file that an editor put a byte order mark in front of', () => {
    expect(opened(`\uFEFF${saved(blankProject())}`)).toEqual(blankProject());
  });

  it('makes zero of minus zero, so that the second opening equals the first', () => {
    const project = opened(saved(blankProject()).replace('"aftOfStemM": 0,', '"aftOfStemM": -0.0,'));
    expect(project.boat.deckLine[0]?.aftOfStemM).toBe(0);
  });

  it('says that a file of this version was not upgraded', () => {
    const result = openProject(saved(blankProject()));
    expect(result).toMatchObject({ ok: true, upgradedFrom: null });
  });
});

it('the arbitrary projects hold every kind of shape, placement, wind and change', () => {
  const kindsIn = (value: unknown): string[] => {
    if (typeof value !== 'object' || value === null) return [];
    const { kind } = value as { kind?: unknown };
    return [...(typeof kind === 'string' ? [kind] : []), ...Object.values(value).flatMap(kindsIn)];
  };
  const kinds = new Set(fc.sample(arbitraryProject, { numRuns: 200, seed: 1 }).flatMap(kindsIn));
  const written = JSON.parse(readFileSync('tests/data/projects/every-kind.json', 'utf8')) as Project;
  const everyKind = kindsIn([written.fittings, written.conditions, written.plans]);
  expect(new Set(everyKind).size).toBeGreaterThan(18);
  expect(everyKind.filter((kind) => !kinds.has(kind))).toEqual([]);
});

describe('saving what would not open', () => {
  it('refuses a number that JSON writes as null', () => {
    const project = blankProject();
    const broken = { ...project, boat: { ...project.boat, beamM: Number.NaN } };
    expect(saveProject(broken)).toEqual({
      ok: false,
      errors: [{ path: 'boat.beamM', message: 'must be a number from 0.1 to 100; it is NaN' }],
    });
  });

  it('refuses an id that is taken', () => {
    const zone = { id: 'deck', name: 'Deck' };
    expect(saveProject(blankProject({ zones: [zone, zone] }))).toEqual({
      ok: false,
      errors: [{ path: 'zones[1].id', message: '"deck" is taken already, by zones[0].id' }],
    });
  });

  it('refuses a project too large to open, and half a character, which no file can hold', () => {
    const sources = Array.from({ length: 500 }, (_, i) => ({ id: `s${i}`, text: '帆'.repeat(5000) }));
    const large = blankProject({ sources, notes: '帆'.repeat(5000) });
    expect(saveProject(large)).toMatchObject({ ok: true });
    const plans = Array.from({ length: 50 }, (_, i) => ({
      id: `p${i}`,
      name: 'p',
      note: '帆'.repeat(5000),
      items: [],
    }));
    expect(saveProject({ ...large, plans })).toEqual({
      ok: false,
      errors: [{ path: '', message: 'the file is larger than 8 MB' }],
    });
    expect(saveProject(blankProject({ notes: '\ud83d' }))).toMatchObject({
      ok: false,
      errors: [{ path: 'notes' }],
    });
  });
});
