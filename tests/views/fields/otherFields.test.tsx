import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, it } from 'vitest';
import type { ProjectDimension, ProjectRanged } from '../../../src/project/file/schema';
import { CheckField } from '../../../src/ui/fields/CheckField';
import { ChoiceField } from '../../../src/ui/fields/ChoiceField';
import { DimensionField } from '../../../src/ui/fields/DimensionField';
import { NumberField } from '../../../src/ui/fields/NumberField';
import { RangedField } from '../../../src/ui/fields/RangedField';
import { NoteField, TextField } from '../../../src/ui/fields/TextField';

afterEach(cleanup);

function type(name: string, text: string): void {
  fireEvent.change(screen.getByRole('textbox', { name }), { target: { value: text } });
}

function textOf(name: string): string {
  return screen.getByRole<HTMLInputElement>('textbox', { name }).value;
}

describe('text', () => {
  function Name({ commits }: { readonly commits: string[] }) {
    const [value, setValue] = useState('Stanchions');
    const commit = (next: string): void => {
      commits.push(next);
      setValue(next);
    };
    return <TextField kind="name" label="Name" value={value} onCommit={commit} />;
  }

  it('commits a name as it is typed, and keeps the last one while the field is empty', async () => {
    const commits: string[] = [];
    render(<Name commits={commits} />);
    const user = userEvent.setup();
    await user.type(screen.getByRole('textbox'), '!');
    expect(commits).toEqual(['Stanchions!']);
    await user.clear(screen.getByRole('textbox'));
    await user.tab();
    expect(commits).toEqual(['Stanchions!']);
    expect(textOf('Name')).toBe('');
    expect(screen.getByText('This must not be empty; "Stanchions!" stays in force.')).toBeTruthy();
  });

  it('refuses what the file would refuse', () => {
    const commits: string[] = [];
    render(<Name commits={commits} />);
    type('Name', 'a\u202eb');
    fireEvent.blur(screen.getByRole('textbox'));
    expect(screen.getByText(/must not hold the unprintable character/)).toBeTruthy();
    type('Name', 'x'.repeat(201));
    expect(screen.getByText(/must have at most 200 characters/)).toBeTruthy();
    expect(commits).toEqual([]);
  });

  it('takes line breaks in a note, and Enter does not end it', async () => {
    const commits: string[] = [];
    render(
      <NoteField kind="note" label="Note" value="one" onCommit={(next) => commits.push(next)} rows={2} />,
    );
    await userEvent.setup().type(screen.getByRole('textbox'), '{Enter}');
    expect(commits).toEqual(['one\n']);
  });
});

describe('numbers', () => {
  it('shows a fraction as per cent and takes a bare number for per cent', () => {
    const commits: number[] = [];
    render(
      <NumberField
        isPercent
        label="Duty"
        range={{ fromSi: 0, toSi: 1 }}
        valueSi={0.05}
        onCommit={(next) => commits.push(next)}
      />,
    );
    expect(textOf('Duty')).toBe('5%');
    type('Duty', '12,5');
    expect(commits).toEqual([0.125]);
    type('Duty', '120');
    fireEvent.blur(screen.getByRole('textbox'));
    expect(screen.getByText(/from 0 to 100% is accepted; 5% stays in force/)).toBeTruthy();
  });

  it('takes whole numbers only where things are counted', () => {
    const commits: number[] = [];
    render(
      <NumberField
        isWhole
        label="Count"
        range={{ fromSi: 2, toSi: 500 }}
        valueSi={7}
        onCommit={(next) => commits.push(next)}
      />,
    );
    type('Count', '7.5');
    fireEvent.blur(screen.getByRole('textbox'));
    expect(screen.getByText(/is not whole: a whole number from 2 to 500/)).toBeTruthy();
    type('Count', '9');
    expect(commits).toEqual([9]);
  });

  it('does not take a change where it is only read', async () => {
    const commits: number[] = [];
    render(
      <NumberField
        readOnly
        label="Count"
        range={{ fromSi: 0, toSi: 9 }}
        valueSi={7}
        onCommit={(next) => commits.push(next)}
      />,
    );
    await userEvent.setup().type(screen.getByRole('textbox'), '5{ArrowUp}{Escape}');
    expect(commits).toEqual([]);
    expect(textOf('Count')).toBe('7');
  });
});

describe('choices', () => {
  it('hands over the chosen value', async () => {
    const commits: string[] = [];
    render(
      <ChoiceField
        label="Side"
        value="port"
        choices={[
          { value: 'port', label: 'port' },
          { value: 'starboard', label: 'starboard' },
        ]}
        error="Not on this side."
        onCommit={(next) => commits.push(next)}
      />,
    );
    await userEvent.setup().selectOptions(screen.getByRole('combobox', { name: 'Side' }), 'starboard');
    expect(commits).toEqual(['starboard']);
    expect(screen.getByRole('combobox').getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText('Not on this side.')).toBeTruthy();
  });

  it('ticks and unticks', async () => {
    const commits: boolean[] = [];
    render(<CheckField label="A pair" value={false} onCommit={(next) => commits.push(next)} />);
    await userEvent.setup().click(screen.getByRole('checkbox', { name: 'A pair' }));
    expect(commits).toEqual([true]);
  });
});

describe('a dimension', () => {
  it('keeps the length when its basis changes, and the basis when its length changes', async () => {
    const commits: ProjectDimension[] = [];
    const value: ProjectDimension = { m: 0.025, basis: 'measured' };
    render(
      <DimensionField label="Diameter" unit="mm" value={value} onCommit={(next) => commits.push(next)} />,
    );
    type('Diameter', '30');
    await userEvent.setup().selectOptions(screen.getByRole('combobox'), 'estimated');
    expect(commits).toEqual([
      { m: 0.03, basis: 'measured' },
      { m: 0.025, basis: 'estimated' },
    ]);
  });

  it('names the accepted range in the shown unit', () => {
    render(
      <DimensionField
        label="Diameter"
        unit="mm"
        value={{ m: 0.025, basis: 'measured' }}
        onCommit={() => undefined}
      />,
    );
    type('Diameter', '0');
    fireEvent.blur(screen.getByRole('textbox'));
    expect(screen.getByText(/from 0.1 to 200000 mm is accepted; 25 mm stays in force/)).toBeTruthy();
  });
});

describe('best, low and high', () => {
  function Ranged({ commits }: { readonly commits: ProjectRanged[] }) {
    const [value, setValue] = useState<ProjectRanged>({ best: 1, low: 0.8, high: 1.2 });
    return (
      <RangedField
        label="Coefficient"
        dimension="none"
        unit="1"
        range={{ fromSi: 0, toSi: 100 }}
        value={value}
        onCommit={(next) => {
          commits.push(next);
          setValue(next);
        }}
      />
    );
  }

  it('waits until they are in order, and keeps the last good ones in force', () => {
    const commits: ProjectRanged[] = [];
    render(<Ranged commits={commits} />);
    type('best', '1.5');
    expect(commits).toEqual([]);
    expect(textOf('best')).toBe('1.5');
    expect(screen.getByText('High (1.2) is below best (1.5); 1 (0.8 to 1.2) stays in force.')).toBeTruthy();
    type('high', '2');
    expect(commits).toEqual([{ best: 1.5, low: 0.8, high: 2 }]);
    expect(screen.queryByText(/stays in force/)).toBeNull();
  });

  it('commits a change that keeps the order at once', () => {
    const commits: ProjectRanged[] = [];
    render(<Ranged commits={commits} />);
    type('low', '0,9');
    expect(commits).toEqual([{ best: 1, low: 0.9, high: 1.2 }]);
  });

  it('is a group with a name', () => {
    render(<Ranged commits={[]} />);
    expect(screen.getByRole('group', { name: 'Coefficient' })).toBeTruthy();
  });
});
