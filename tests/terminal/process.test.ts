import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readText } from '../../src/terminal/readText';
import { fileText } from './testProject';

const folder = mkdtempSync(join(tmpdir(), 'ledger-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

function write(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** The real command, as the script of package.json runs it. */
function run(...words: string[]): { status: number | null; stdout: string; stderr: string } {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'src/terminal/ledger.ts', ...words],
    { encoding: 'utf8' },
  );
  return { status, stdout, stderr };
}

describe('the command in a process of its own', () => {
  it(
    'prints JSON and ends with 0; refuses a bad file with 1, a bad command with 2',
    { timeout: 60_000 },
    () => {
      const good = run(write('good.json', fileText()), '--plan', 'first', '--json');
      expect({ status: good.status, stderr: good.stderr }).toEqual({ status: 0, stderr: '' });
      expect(JSON.parse(good.stdout)).toMatchObject({ format: 'windtoll-ledger', version: 1 });

      const bad = write('bad.json', '{"format":"windtoll-project","version":3}');
      const refused = run(bad);
      expect({ status: refused.status, stdout: refused.stdout }).toEqual({ status: 1, stdout: '' });
      expect(refused.stderr).toMatch(/^version: the file has version 3, newer than version 2[^\n]*\n$/);

      expect(run('--json')).toMatchObject({ status: 2, stdout: '' });
    },
  );
});

describe('reading a file', () => {
  it('keeps a byte order mark for the project file to judge', () => {
    expect(readText(write('mark.json', '\uFEFF{}'))).toEqual({ ok: true, text: '\uFEFF{}' });
  });

  it('says what is wrong with what is no text file', () => {
    expect(readText(join(folder, 'none.json'))).toEqual({ ok: false, message: 'there is no such file' });
    expect(readText(folder)).toEqual({ ok: false, message: 'this is a folder, not a file' });
    expect(readText(write('bytes.json', Uint8Array.of(0x7b, 0xff, 0x7d)))).toEqual({
      ok: false,
      message: 'the file is not UTF-8 text',
    });
    expect(readText('a\u0000b').ok).toBe(false);
  });

  it('stops one byte after the largest project, however long the file is', () => {
    const read = readText(write('long.json', ' '.repeat(8_100_000)));
    expect(read.ok && read.text.length).toBe(8_000_001);
  });
});
