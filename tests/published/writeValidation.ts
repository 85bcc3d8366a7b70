/**
 * `npm run validation` writes docs/validation.md from the published checks; with `--check` it only compares, and ends
 * with 1 and one line when the page is stale. A page is never written while a check is not as stated.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { publishedChecks } from './checks';
import { isAsStated, judgeCheck } from './judgeCheck';
import { validationDocument } from './validationDocument';

const path = join(import.meta.dirname, '../../docs/validation.md');
const wrong = publishedChecks.filter((check) => !isAsStated(check, judgeCheck(check))).map(({ id }) => id);

function complain(line: string): void {
  console.error(line);
  process.exitCode = 1;
}

if (wrong.length > 0) {
  complain(`docs/validation.md cannot be vouched for: ${wrong.join(', ')} not as stated; run the tests.`);
} else {
  const text = validationDocument(publishedChecks);
  if (!process.argv.includes('--check')) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  } else if (!existsSync(path) || readFileSync(path, 'utf8') !== text) {
    complain('docs/validation.md is stale: run `npm run validation` and look at what changed.');
  }
}
