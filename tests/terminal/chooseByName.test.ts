import { expect, it } from 'vitest';
import { chooseByName } from '../../src/terminal/chooseByName';

const items = [
  { id: 'a', name: 'Beat' },
  { id: 'Beat', name: 'Run' },
  { id: 'c', name: 'run' },
  { id: 'd', name: 'Reach' },
  { id: 'e', name: 'Twin' },
  { id: 'f', name: 'Twin' },
];

function found(typed: string): string {
  const choice = chooseByName(items, typed, 'condition');
  return choice.ok ? choice.item.id : choice.message;
}

it('an exact id wins over a name, an exact name over another spelling', () => {
  expect(found('Beat')).toBe('Beat');
  expect(found('run')).toBe('c');
  expect(found('Run')).toBe('Beat');
  expect(found('reach')).toBe('d');
});

it('a name that means several is refused with their ids', () => {
  expect(found('RUN')).toBe('several are called "RUN"; give an id: Beat, c');
  expect(found('Twin')).toBe('several are called "Twin"; give an id: e, f');
});

it('an unknown name is answered with the known ones', () => {
  expect(found('gale')).toBe(
    'there is no condition "gale"; known: a (Beat), Beat (Run), c (run), d (Reach), e (Twin), f (Twin)',
  );
  expect(chooseByName([], 'x', 'plan')).toEqual({
    ok: false,
    message: 'there is no plan "x"; the project has no plan',
  });
});
