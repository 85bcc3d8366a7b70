/**
 * `npm run validation` writes docs/validation.md from the published checks, and the tables of docs/physics.md from those
 * that the app shows; with `--check` it only compares, and ends with 1 and one line when a page is stale. A page is never
 * written while a check is not as stated.
 */
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { publishedChecks } from './checks';
import { isAsStated, judgeCheck } from './judgeCheck';
import { withWrittenParts } from './physicsDocument';
import { validationDocument } from './validationDocument';

const docs = join(import.meta.dirname, '../../docs');
const wrong = publishedChecks.filter((check) => !isAsStated(check, judgeCheck(check))).map(({ id }) => id);

function complain(line: string): void {
  console.error(line);
  process.exitCode = 1;
}

async function bring(name: string, text: string): Promise<void> {
  const path = join(docs, name);
  if (!process.argv.includes('--check')) {
    mkdirSync(dirname(path), { recursive: true });
    await writeFile(path, text);
  } else if (!existsSync(path) || readFileSync(path, 'utf8') !== text) {
    complain(`docs/${name} is stale: run \`npm run validation\` and look at what changed.`);
  }
}

/** As prettier would leave it, which judges the prose around the tables too. */
async function physicsText(): Promise<string> {
  const path = join(docs, 'physics.md');
  const options = await resolveConfig(path);
  return format(withWrittenParts(readFileSync(path, 'utf8')), { ...options, parser: 'markdown' });
}

if (wrong.length > 0) {
  complain(`docs/validation.md cannot be vouched for: ${wrong.join(', ')} not as stated; run the tests.`);
} else {
  await bring('validation.md', validationDocument(publishedChecks));
  await bring('physics.md', await physicsText());
}
