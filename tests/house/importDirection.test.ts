import { ESLint } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, expect, it } from 'vitest';

// The project's own configuration, without the rules that need types: a planted file is in no TypeScript project.
const eslint = new ESLint({
  overrideConfig: [{ files: ['**/*.ts'], ...tseslint.configs.disableTypeChecked }],
});

async function importErrors(filePath: string, source: string): Promise<readonly string[]> {
  const [result] = await eslint.lintText(source, { filePath });
  const messages = result?.messages ?? [];
  expect(messages.filter((message) => message.fatal === true)).toEqual([]);
  return messages
    .map((message) => message.ruleId ?? '')
    .filter((rule) => rule === 'no-restricted-imports' || rule === 'no-restricted-syntax');
}

const roomsFromTheTop = ['app', 'views', 'charts', 'state', 'jobs', 'project', 'units', 'physics'];

/** Every arrow that points upwards, and the sideways ones. */
const forbiddenArrows: readonly (readonly [from: string, to: string])[] = [
  ...roomsFromTheTop.flatMap((from, place) =>
    roomsFromTheTop.slice(0, place).map((to) => [from, to] as const),
  ),
  ['charts', 'ui'],
  ['ui', 'charts'],
  ['ui', 'views'],
  ['state', 'ui'],
  ['terminal', 'app'],
  ['terminal', 'views'],
  ['terminal', 'ui'],
  ['terminal', 'state'],
  ['terminal', 'jobs'],
  ['app', 'terminal'],
  ['views', 'terminal'],
  ['project', 'terminal'],
  ['physics', 'terminal'],
];

const openArrows: readonly (readonly [from: string, to: string])[] = [
  ...roomsFromTheTop.flatMap((from, place) =>
    roomsFromTheTop.slice(place + 1).map((to) => [from, to] as const),
  ),
  ['views', 'ui'],
  ['ui', 'state'],
  ['terminal', 'project'],
  ['terminal', 'physics'],
];

describe('import direction between rooms', () => {
  it.each(forbiddenArrows)('refuses an import from %s to %s', async (from, to) => {
    const source = `import { planted } from '../../${to}/planted/planted';\nexport const used = planted;\n`;
    expect(await importErrors(`src/${from}/planted/planted.ts`, source)).toEqual(['no-restricted-imports']);
  });

  it.each(openArrows)('allows an import from %s to %s', async (from, to) => {
    const source = `import { planted } from '../../${to}/planted/planted';\nexport const used = planted;\n`;
    expect(await importErrors(`src/${from}/planted/planted.ts`, source)).toEqual([]);
  });

  it.each([
    [
      'a type import',
      "import type { Planted } from '../views/ledger/Planted';\nexport type Used = Planted;\n",
    ],
    ['a re-export', "export { planted } from '../views/ledger/planted';\n"],
    ['a roundabout path', "import '../../src/views/ledger/planted';\n"],
    ['a path through ./', "import './../views/ledger/planted';\n"],
    ['a path down and up', "import './air/../../views/ledger/planted';\n"],
    ['the demo', "import '../../demo-data/planted.json';\n"],
    ['a lazy import', "export const planted = () => import('../views/ledger/planted');\n"],
    ['a file of the tests', "import '../../tests/data/planted';\n"],
  ])('refuses %s from physics', async (_name, source) => {
    expect(await importErrors('src/physics/planted.ts', source)).toHaveLength(1);
  });

  it.each([
    ['physics', 'zod'],
    ['physics', 'd3'],
    ['physics', 'react'],
    ['physics', 'node:fs'],
    ['units', 'zod'],
    ['project', 'react'],
    ['state', 'd3'],
    ['ui', 'd3'],
    ['views', 'd3'],
    ['views', 'zod'],
    ['charts', 'd3-selection'],
    ['views', 'node:fs'],
    ['views', 'papaparse'],
    ['terminal', 'react'],
  ])('refuses in %s the package %s', async (room, packageName) => {
    expect(await importErrors(`src/${room}/planted.ts`, `import '${packageName}';\n`)).toEqual([
      'no-restricted-imports',
    ]);
  });

  it.each([
    ['project', 'zod'],
    ['project', 'papaparse'],
    ['charts', 'd3'],
    ['views', 'react'],
    ['app', 'react-dom/client'],
    ['state', 'zustand'],
    ['terminal', 'node:fs'],
  ])('allows in %s the package %s', async (room, packageName) => {
    expect(await importErrors(`src/${room}/planted.ts`, `import '${packageName}';\n`)).toEqual([]);
  });

  it.each([
    ['src/views/ledger/planted.ts', '../fairing/planted'],
    ['src/views/ledger/table/planted.ts', '../../fairing/planted'],
    ['src/views/ledger/table/row/planted.ts', '../../../fairing/planted'],
    ['src/views/ledger/planted.ts', '../../views/fairing/planted'],
  ])('refuses sideways, from %s to %s', async (filePath, address) => {
    expect(await importErrors(filePath, `import '${address}';\n`)).toEqual(['no-restricted-imports']);
  });

  it.each([
    ['src/views/ledger/planted.ts', './table/planted'],
    ['src/views/ledger/table/planted.ts', '../planted'],
    ['src/views/ledger/table/planted.ts', '../../../state/planted'],
    ['src/physics/member/planted.ts', '../air/planted'],
  ])('allows within a room and downwards, from %s to %s', async (filePath, address) => {
    expect(await importErrors(filePath, `import '${address}';\n`)).toEqual([]);
  });
});
