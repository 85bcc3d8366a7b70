import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openProject } from '../../../src/project/file/openProject';
import { limits } from '../../../src/project/file/limits';
import { projectSchema } from '../../../src/project/file/schema';

const page = readFileSync('docs/file-format.md', 'utf8');

/** Keys, fixed words and bounds anywhere in a JSON Schema. */
function partsOf(node: unknown, parts = { words: new Set<string>(), bounds: new Set<number>() }) {
  if (typeof node !== 'object' || node === null) return parts;
  const { properties, enum: choices, const: fixed, minimum, maximum } = node as Record<string, unknown>;
  for (const key of Object.keys(properties ?? {})) parts.words.add(key);
  for (const word of [fixed, ...((choices as unknown[] | undefined) ?? [])]) {
    if (typeof word === 'string') parts.words.add(word);
  }
  for (const bound of [minimum, maximum]) if (typeof bound === 'number') parts.bounds.add(bound);
  for (const part of Object.values(node)) partsOf(part, parts);
  return parts;
}

const schema = z.toJSONSchema(projectSchema, { unrepresentable: 'any' });
const { words, bounds } = partsOf(schema);

describe('the page about the file format', () => {
  it('has every key and every fixed word of the schema', () => {
    expect(words.size).toBeGreaterThan(150);
    expect([...words].filter((word) => !page.includes(`\`${word}\``))).toEqual([]);
  });

  it('has every bound of the schema', () => {
    expect(bounds.size).toBeGreaterThan(20);
    const numbers = new Set((page.match(/-?\d+(?:\.\d+)?(?:e\d+)?/g) ?? []).map(Number));
    expect([...bounds, ...Object.values(limits)].filter((bound) => !numbers.has(bound))).toEqual([]);
  });

  it('shows a file that opens', () => {
    const example = /```json\n([^`]*)```/.exec(page)?.[1] ?? '';
    const result = openProject(example);
    expect(result.ok ? [] : result.errors).toEqual([]);
  });
});
