import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import ts from 'typescript';

/** Only these may notice: what was published, and what must be so. Claims about single functions of the core may not. */
const testFolders = ['tests/published', 'tests/properties'];
/** Five seconds or more each. */
export const slowTests = ['additivity', 'members', 'fairing', 'secondRoute', 'doubts', 'accuracy'];
const searched = ['src/physics', 'src/units', 'src/project', ...testFolders];

function filesBelow(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`);
}

/** Files that a file imports by a relative path, types included. */
function importsOf(root: string, file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8');
  return ts
    .preProcessFile(text)
    .importedFiles.filter(({ fileName }) => fileName.startsWith('.'))
    .map(({ fileName }) => `${relative(root, join(root, dirname(file), fileName)).replaceAll('\\', '/')}.ts`);
}

/** For every file, those that import it. */
function importersOf(root: string): Map<string, string[]> {
  const importers = new Map<string, string[]>();
  for (const file of searched.flatMap((folder) => filesBelow(root, folder))) {
    for (const imported of importsOf(root, file)) {
      importers.set(imported, [...(importers.get(imported) ?? []), file]);
    }
  }
  return importers;
}

/** Steps from a source file to each file that depends on it. */
function distances(importers: ReadonlyMap<string, readonly string[]>, file: string): Map<string, number> {
  const found = new Map([[file, 0]]);
  for (const [at, steps] of found) {
    for (const importer of importers.get(at) ?? []) {
      if (!found.has(importer)) found.set(importer, steps + 1);
    }
  }
  return found;
}

/**
 * Tests of published numbers and of properties that depend on a source file, in the order in which they are likely to notice
 * soonest: the published numbers, which take half a second, then those named like the file, then the nearest, and last those
 * that take five seconds or more.
 */
export function relatedTests(root: string, file: string): string[] {
  const steps = distances(importersOf(root), file);
  const name = basename(file, '.ts');
  const rank = (test: string): number => {
    if (test.startsWith('tests/published/')) return test.endsWith('/published.test.ts') ? -4 : -3;
    const stem = basename(test, '.test.ts');
    if (stem === name) return -2;
    if (name.startsWith(stem) || stem.startsWith(name)) return -1;
    return (steps.get(test) ?? 0) + (slowTests.includes(stem) ? 100 : 0);
  };
  return [...steps.keys()]
    .filter(
      (path) => path.endsWith('.test.ts') && testFolders.some((folder) => path.startsWith(`${folder}/`)),
    )
    .sort((a, b) => rank(a) - rank(b) || a.localeCompare(b));
}

/** The published numbers first, the slow tests last. */
export function inOrderOfCost<T>(tests: readonly T[], pathOf: (test: T) => string): T[] {
  const cost = (test: T): number =>
    pathOf(test).includes('tests/published/') ? -2 : slowTests.indexOf(basename(pathOf(test), '.test.ts'));
  return [...tests].sort((a, b) => cost(a) - cost(b));
}
