import { createHash } from 'node:crypto';
import ts from 'typescript';

/** A top-level statement of a file that mutants may lie in, by its lines. */
export interface Statement {
  readonly file: string;
  readonly fromLine: number;
  readonly toLine: number;
  /** Of its text: what was found about it holds as long as this does. */
  readonly hash: string;
}

/** The statements of a file that do something: functions, constants, classes; no imports and no types. */
export function statementsOf(file: string, text: string): Statement[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  return source.statements.filter(isCode).map((statement) => {
    const lineOf = (place: number): number => source.getLineAndCharacterOfPosition(place).line + 1;
    const body = statement.getText(source);
    return {
      file,
      fromLine: lineOf(statement.getStart(source)),
      toLine: lineOf(statement.getEnd()),
      hash: hashOf(body),
    };
  });
}

function isCode(statement: ts.Statement): boolean {
  return !(
    ts.isImportDeclaration(statement) ||
    ts.isExportDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement)
  );
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}

/** In an order drawn by a seed: the same for the same texts, and every beginning of it is a random sample. */
export function drawnOrder(statements: readonly Statement[], seed: string): Statement[] {
  const key = ({ file, hash }: Statement): string => hashOf(`${seed} ${file} ${hash}`);
  return [...statements].sort((a, b) => key(a).localeCompare(key(b)));
}

/** Whether a path is on a list of patterns as Stryker reads them: the last that fits decides, `!` takes away. */
export function isListed(path: string, patterns: readonly string[]): boolean {
  const last = patterns.filter((pattern) => fits(path, pattern.replace(/^!/, ''))).at(-1);
  return last !== undefined && !last.startsWith('!');
}

function fits(path: string, pattern: string): boolean {
  const source = pattern
    .replace(/[.+^${}()|[\]\\]/g, '\\$&')
    .replaceAll('**/', '(.*/)?')
    .replace(/(?<!\.)\*/g, '[^/]*');
  return new RegExp(`^${source}$`).test(path);
}
