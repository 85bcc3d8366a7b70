import { describe, expect, it } from 'vitest';
import { parseArguments, type LedgerCommand } from '../../src/terminal/parseArguments';

function command(...words: string[]): LedgerCommand {
  const parsed = parseArguments(words);
  if (parsed.kind !== 'run') throw new Error(JSON.stringify(parsed));
  return parsed.command;
}

function complaint(...words: string[]): string {
  const parsed = parseArguments(words);
  return parsed.kind === 'problem' ? parsed.message : parsed.kind;
}

describe('the words of the ledger command', () => {
  it('a file alone asks for the first condition, no plan, as a table', () => {
    expect(command('boat.json')).toEqual({
      file: 'boat.json',
      condition: null,
      isProfile: false,
      plan: null,
      against: null,
      form: 'table',
    });
  });

  it('options may stand before and after the file, with a space or an equals sign', () => {
    expect(command('--plan', 'A', 'boat.json', '--condition=Up wind', '--against=B=C', '--json')).toEqual({
      file: 'boat.json',
      condition: 'Up wind',
      isProfile: false,
      plan: 'A',
      against: 'B=C',
      form: 'json',
    });
    expect(command('boat.json', '--profile').isProfile).toBe(true);
    expect(command('boat.json', '--plan=--odd').plan).toBe('--odd');
    expect(command('--', '-boat.json').file).toBe('-boat.json');
  });

  it.each([
    [[], 'no file is given'],
    [[''], 'no file is given'],
    [['a', 'b'], 'more than one file is given'],
    [['a', '--condition', 'x', '--profile'], '--condition and --profile exclude each other'],
    [['a', '--json', '--table'], '--json and --table exclude each other'],
    [['a', '--plan'], '--plan needs a name'],
    [['a', '--plan', '--json'], '--plan needs a name'],
    [['a', '--plan='], '--plan needs a name'],
    [['a', '--plan', 'x', '--plan', 'y'], '--plan is given twice'],
    [['a', '--json=yes'], '--json takes no value'],
    [['a', '--colour'], 'unknown option --colour'],
    [['a', '-p'], 'unknown option -p'],
  ])('%j is not understood: %s', (words, message) => {
    expect(complaint(...words)).toBe(message);
  });

  it('help wins over everything', () => {
    expect(parseArguments(['--plan', '--help']).kind).toBe('help');
  });
});
