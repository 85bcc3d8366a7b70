import { describe, expect, it } from 'vitest';
import { usage } from '../../src/terminal/parseArguments';
import { runLedger, type CommandResult } from '../../src/terminal/runLedger';
import { fileText } from './testProject';

function run(text: string, ...words: string[]): CommandResult {
  return runLedger(['boat.json', ...words], () => ({ ok: true, text }));
}

function refusal(result: CommandResult): string {
  expect({ exitCode: result.exitCode, stdout: result.stdout }).toEqual({ exitCode: 1, stdout: '' });
  return result.stderr;
}

const good = fileText();

describe('the ledger command', () => {
  it('prints the first condition without a plan when nothing else is asked', () => {
    const result = run(good);
    expect({ exitCode: result.exitCode, stderr: result.stderr }).toEqual({ exitCode: 0, stderr: '' });
    expect(result.stdout).toContain('Upwind: true wind');
    expect(result.stdout).not.toContain('saving');
  });

  it('prints one JSON object with --json', () => {
    const { stdout } = run(
      good,
      '--json',
      '--condition',
      'RUN',
      '--plan',
      'first',
      '--against',
      'Second plan',
    );
    const { question } = JSON.parse(stdout) as { question: unknown };
    expect(question).toEqual({
      basis: { kind: 'condition', conditionId: 'run' },
      planId: 'first',
      planName: 'First plan',
      againstPlanId: 'second',
      againstPlanName: 'Second plan',
    });
  });

  it('weights the conditions of the course profile', () => {
    // Units hang on their numbers by no-break spaces.
    const stdout = run(good, '--profile').stdout.replaceAll('\u00a0', ' ');
    expect(stdout).toContain('course profile Out and home');
    expect(stdout).toContain('Upwind (3.00 h, 75.0 %)');
    expect(stdout).toContain('Run (1.00 h, 25.0 %)');
  });

  it('answers a command it does not understand with the usage and 2', () => {
    const result = run(good, '--condition', 'up', '--profile');
    expect(result).toEqual({
      exitCode: 2,
      stdout: '',
      stderr: `--condition and --profile exclude each other\n${usage}\n`,
    });
    expect(runLedger(['--help'], () => ({ ok: false, message: '' }))).toEqual({
      exitCode: 0,
      stdout: `${usage}\n`,
      stderr: '',
    });
  });

  it('names every unknown name and those that exist, a line each', () => {
    expect(refusal(run(good, '--condition', 'gale', '--plan', 'x\u001b[2J', '--against', 'third'))).toBe(
      [
        '--condition: there is no condition "gale"; known: up (Upwind), run (Run)',
        '--plan: there is no plan "x"; known: first (First plan), second (Second plan)',
        '--against: there is no plan "third"; known: first (First plan), second (Second plan)',
        '',
      ].join('\n'),
    );
  });

  it('says when there is no profile and no condition', () => {
    expect(refusal(run(fileText({ profile: null }), '--profile'))).toBe(
      'profile: The project has no course profile.\n',
    );
    expect(refusal(run(fileText({ conditions: [], profile: null })))).toBe(
      'conditions: the project has no sailing condition\n',
    );
  });

  it('gives a line for each error of a bad file, with its path', () => {
    const content = JSON.parse(good) as {
      boat: Record<string, unknown>;
      fittings: Record<string, unknown>[];
    };
    content.boat['lengthM'] = 'long';
    const [first] = content.fittings;
    if (first !== undefined) first['name'] = '';
    expect(refusal(run(JSON.stringify(content)))).toBe(
      [
        'boat.lengthM: must be a number from 1 to 200; it is "long"',
        'fittings[0].name: must not be empty',
        '',
      ].join('\n'),
    );
  });

  it('names the file where the file as a whole is wrong', () => {
    expect(refusal(run('{ "a": '))).toMatch(/^boat\.json: the file is not valid JSON[^\n]*\n$/);
    expect(refusal(runLedger(['no\nfile'], () => ({ ok: false, message: 'there is no such file' })))).toBe(
      'no file: there is no such file\n',
    );
  });
});
