import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { halfTyped } from '../../setup/halfTyped';
import type { ProjectRanged } from '../../../src/project/file/schema';
import { useTypedTexts, wantField } from '../../../src/state/typedTexts';
import { QuantityField } from '../../../src/ui/fields/QuantityField';
import { RangedField } from '../../../src/ui/fields/RangedField';
import { TextField } from '../../../src/ui/fields/TextField';
import { UnfinishedMark } from '../../../src/ui/fields/UnfinishedMark';

afterEach(cleanup);
beforeEach(() => {
  useTypedTexts.setState({ texts: new Map(), elsewhere: [], typingIn: null, wanted: null });
});

const range = { fromSi: 0.001, toSi: 0.1 };

interface DiameterProps {
  readonly row?: string;
  readonly commits?: number[];
  /** What the project's own checks refuse, m. */
  readonly refusedM?: number;
  readonly valueM?: number;
}

function Diameter({ row = 'f1', commits = [], refusedM, valueM = 0.025 }: DiameterProps) {
  const [m, setM] = useState(valueM);
  const [error, setError] = useState<string | undefined>(undefined);
  return (
    <QuantityField
      label="Diameter"
      dimension="length"
      unit="mm"
      range={range}
      typedFor={`fitting/${row}.shape.diameter`}
      valueSi={m}
      error={error}
      onCommit={(next) => {
        commits.push(next);
        if (next === refusedM) {
          setError('Not taken: this must be 0 or at least 0.01.');
          return;
        }
        setError(undefined);
        setM(next);
      }}
    />
  );
}

function field(name = 'Diameter'): HTMLInputElement {
  return screen.getByRole('textbox', { name });
}

function type(text: string, name = 'Diameter'): void {
  fireEvent.change(field(name), { target: { value: text } });
}

function keptTexts(): readonly string[] {
  return [...useTypedTexts.getState().texts.values()].map(({ text }) => text);
}

describe('a field that goes and comes back', () => {
  it('brings half-typed text and its error at once', () => {
    const { unmount } = render(<Diameter />);
    type('12 qu');
    unmount();
    render(<Diameter />);
    expect(field().value).toBe('12 qu');
    expect(field().getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText(/"12 qu" has no unit of.*25 mm stays in force/)).toBeTruthy();
  });

  it('brings what was out of range, and names the value in force by then', () => {
    const { unmount } = render(<Diameter />);
    type('5000');
    unmount();
    render(<Diameter valueM={0.03} />);
    expect(screen.getByText(/"5000" lies outside.*30 mm stays in force/)).toBeTruthy();
  });

  it('brings what the project refused, with the reason and the value in force', () => {
    const { unmount } = render(<Diameter refusedM={0.005} />);
    type('5');
    expect(screen.getByText(/at least 0.01/)).toBeTruthy();
    unmount();
    render(<Diameter refusedM={0.005} />);
    expect(field().value).toBe('5');
    expect(
      screen.getByText('Not taken: this must be 0 or at least 0.01; 25 mm stays in force.'),
    ).toBeTruthy();
  });

  it('keeps the text of one row from another, even without a key', () => {
    const { rerender } = render(<Diameter row="f1" />);
    type('12 qu');
    rerender(<Diameter row="f2" />);
    expect(field().value).toBe('25 mm');
    rerender(<Diameter row="f1" />);
    expect(field().value).toBe('12 qu');
    expect(field().getAttribute('aria-invalid')).toBe('true');
  });

  it('shows nothing more once the text has become a value', () => {
    const commits: number[] = [];
    const { unmount } = render(<Diameter commits={commits} />);
    type('12 qu');
    type('12');
    expect(commits).toEqual([0.012]);
    expect(keptTexts()).toEqual([]);
    unmount();
    render(<Diameter />);
    expect(field().value).toBe('25 mm');
  });

  it('forgets the text on Escape', async () => {
    const { unmount } = render(<Diameter />);
    type('12 qu');
    unmount();
    render(<Diameter />);
    field().focus();
    await userEvent.setup().keyboard('{Escape}');
    expect(field().value).toBe('25 mm');
    expect(keptTexts()).toEqual([]);
  });

  it('takes a text that came back readable only on Enter, and says so', async () => {
    const commits: number[] = [];
    const typed = { text: '12', label: 'Diameter', refusal: null };
    useTypedTexts.setState({ texts: new Map([['fitting/f1.shape.diameter', typed]]) });
    render(<Diameter commits={commits} />);
    expect(screen.getByText('"12" is not taken yet, Enter takes it; 25 mm stays in force.')).toBeTruthy();
    const user = userEvent.setup();
    field().focus();
    await user.tab();
    expect(commits).toEqual([]);
    expect(field().value).toBe('12');
    field().focus();
    await user.keyboard('{Enter}');
    expect(commits).toEqual([0.012]);
    expect(keptTexts()).toEqual([]);
  });

  it('is not wrong to somebody who is still typing', () => {
    render(<Diameter />);
    type('12 qu');
    expect(field().getAttribute('aria-invalid')).toBeNull();
  });

  it('brings an emptied name', () => {
    const name = (
      <TextField
        kind="name"
        label="Name"
        value="Boom"
        typedFor="fitting/f1.name"
        onCommit={() => undefined}
      />
    );
    const { unmount } = render(name);
    type('', 'Name');
    unmount();
    render(name);
    expect(field('Name').value).toBe('');
    expect(screen.getByText('This must not be empty; "Boom" stays in force.')).toBeTruthy();
  });
});

describe('a range that is not in order yet', () => {
  function Ranged({ commits }: { readonly commits: ProjectRanged[] }) {
    const [value, setValue] = useState<ProjectRanged>({ best: 1, low: 0.8, high: 1.2 });
    return (
      <RangedField
        label="Coefficient"
        dimension="none"
        unit="1"
        range={{ fromSi: 0, toSi: 100 }}
        typedFor="fitting/f1.coefficient"
        value={value}
        onCommit={(next) => {
          commits.push(next);
          setValue(next);
        }}
      />
    );
  }

  it('is there again and goes on where it was', () => {
    const commits: ProjectRanged[] = [];
    const { unmount } = render(<Ranged commits={commits} />);
    type('1.5', 'best');
    type('x', 'low');
    unmount();
    render(<Ranged commits={commits} />);
    expect(field('best').value).toBe('1.5');
    expect(field('low').value).toBe('x');
    expect(screen.getByText('High (1.2) is below best (1.5); 1 (0.8 to 1.2) stays in force.')).toBeTruthy();
    type('0.9', 'low');
    type('2', 'high');
    expect(commits).toEqual([{ low: 0.9, best: 1.5, high: 2 }]);
    expect(keptTexts()).toEqual([]);
  });
});

describe('the way back', () => {
  it('is a mark that is silent while somebody types, and names the field afterwards', () => {
    render(
      <>
        <UnfinishedMark within="fitting/f1." />
        <Diameter />
      </>,
    );
    type('12 qu');
    expect(screen.queryByText(/half-typed/)).toBeNull();
    fireEvent.blur(field());
    expect(screen.getByText(halfTyped('Diameter'))).toBeTruthy();
  });

  it('gives the focus to the field that is wanted, once', () => {
    render(<Diameter />);
    act(() => {
      wantField('fitting/f1.shape.diameter');
    });
    expect(document.activeElement).toBe(field());
    expect(useTypedTexts.getState().wanted).toBeNull();
  });
});
