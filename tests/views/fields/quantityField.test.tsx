import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import fc from 'fast-check';
import { useEffect, useState } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { QuantityField } from '../../../src/ui/fields/QuantityField';
import { toSi } from '../../../src/units/convert';
import { usualUnits } from '../../../src/units/displayUnits';
import { showIn } from '../../../src/units/shownUnits';
import type { Dimension, Unit } from '../../../src/units/unitTable';
import { parseQuantity } from '../../../src/units/parse';
import { between } from '../../properties/arbitraries';

afterEach(cleanup);

const speedRange = { fromSi: 0, toSi: 60 };

interface HarnessProps {
  readonly startSi?: number;
  readonly dimension?: Dimension;
  readonly unit?: Unit;
  readonly range?: { readonly fromSi: number; readonly toSi: number };
  readonly commits?: number[];
  readonly error?: string;
  readonly describe?: string;
  readonly onDone?: () => void;
}

const outside = new EventTarget();

/** What undo does: the store changes and the field has no say in it. */
function setFromOutside(valueSi: number): void {
  act(() => {
    outside.dispatchEvent(new CustomEvent('value', { detail: valueSi }));
  });
}

/** Stands in for the store: keeps the value, and lets a test change it from outside. */
function Harness({ startSi = toSi(22, 'kn'), commits = [], ...rest }: HarnessProps) {
  const [valueSi, setValueSi] = useState(startSi);
  useEffect(() => {
    const take = (event: Event): void => {
      setValueSi((event as CustomEvent<number>).detail);
    };
    outside.addEventListener('value', take);
    return () => {
      outside.removeEventListener('value', take);
    };
  }, []);
  return (
    <QuantityField
      label="True wind"
      dimension="speed"
      unit="kn"
      range={speedRange}
      {...rest}
      valueSi={valueSi}
      onCommit={(next) => {
        commits.push(next);
        setValueSi(next);
      }}
    />
  );
}

function field(): HTMLInputElement {
  return screen.getByRole('textbox', { name: 'True wind' });
}

async function retype(text: string) {
  const user = userEvent.setup();
  await user.clear(field());
  await user.type(field(), text);
  return user;
}

describe('what is typed', () => {
  it('shows the value in its unit without the last bits of a conversion', () => {
    render(<Harness />);
    expect(field().value).toBe('22 kn');
  });

  const spellings: readonly [string, Dimension, Unit, number][] = [
    ['22 kn', 'speed', 'kn', 22 * (1852 / 3600)],
    ['11,3 m/s', 'speed', 'kn', 11.3],
    ['100mm', 'length', 'm', 0.1],
    ['1/4 in', 'length', 'mm', 0.00635],
    ['40', 'length', 'mm', 0.04],
  ];
  it.each(spellings)('takes %s', async (text, dimension, unit, expectedSi) => {
    const commits: number[] = [];
    render(
      <Harness
        commits={commits}
        dimension={dimension}
        unit={unit}
        startSi={1}
        range={{ fromSi: 0, toSi: 100 }}
      />,
    );
    await retype(text);
    expect(commits.at(-1)).toBeCloseTo(expectedSi, 12);
    expect(field().value).toBe(text);
  });

  it('commits each readable state while it is typed and leaves the text as typed', async () => {
    const commits: number[] = [];
    render(<Harness commits={commits} />);
    await retype('18 kn');
    expect(commits).toEqual([toSi(1, 'kn'), toSi(18, 'kn')]);
    expect(field().value).toBe('18 kn');
  });

  it('writes the text in the shown unit when the field is left', async () => {
    render(<Harness />);
    const user = await retype('10 m/s');
    await user.tab();
    expect(field().value).toBe('19.4384 kn');
  });

  it('writes the text in the shown unit on Enter and keeps the focus', async () => {
    render(<Harness />);
    await retype('18kn{Enter}');
    expect(field().value).toBe('18 kn');
    expect(document.activeElement).toBe(field());
  });

  it('commits nothing when it is entered and left', async () => {
    const commits: number[] = [];
    render(<Harness commits={commits} startSi={7.123456789012} />);
    const user = userEvent.setup();
    await user.click(field());
    await user.tab();
    expect(commits).toEqual([]);
  });

  it('tells when an edit is over', async () => {
    const onDone = vi.fn();
    render(<Harness onDone={onDone} />);
    const user = await retype('18');
    expect(onDone).not.toHaveBeenCalled();
    await user.keyboard('{Enter}');
    expect(onDone).toHaveBeenCalledTimes(1);
    await user.tab();
    expect(onDone).toHaveBeenCalledTimes(2);
  });
});

describe('what is wrong', () => {
  it('keeps the text, names the accepted range in the shown unit and the value in force', async () => {
    const commits: number[] = [];
    render(<Harness commits={commits} />);
    fireEvent.focus(field());
    fireEvent.change(field(), { target: { value: '300 kn' } });
    fireEvent.blur(field());
    expect(field().value).toBe('300 kn');
    expect(field().getAttribute('aria-invalid')).toBe('true');
    const sentence = '"300 kn" lies outside: a speed from 0 to 116.6 kn is accepted; 22 kn stays in force.';
    expect(screen.getByText(sentence).id).toBe(field().getAttribute('aria-describedby'));
    expect(commits).toEqual([]);
    await userEvent.setup().click(field());
    expect(field().value).toBe('300 kn');
  });

  const wrongTexts: readonly [string, RegExp][] = [
    ['', /^This may not be empty: a speed from/],
    ['fast', /^"fast" does not start with a number/],
    ['22 kg', /^"22 kg" has no unit of a speed \(m\/s, kn, km\/h, mph\)/],
    ['1,234.5', /^"1,234.5" can be read in more than one way/],
    ['1e999', /^"1e999" is too large/],
    ['-1', /^"-1" lies outside/],
  ];
  it.each(wrongTexts)('says what is wrong with "%s"', (text, words) => {
    render(<Harness />);
    fireEvent.change(field(), { target: { value: text } });
    fireEvent.blur(field());
    expect(screen.getByText(words)).toBeTruthy();
    expect(field().value).toBe(text);
  });

  it('does not complain about a unit that is still being typed, and does after a pause', () => {
    vi.useFakeTimers();
    try {
      render(<Harness />);
      fireEvent.change(field(), { target: { value: '18 k' } });
      expect(field().getAttribute('aria-invalid')).toBeNull();
      act(() => {
        vi.advanceTimersByTime(800);
      });
      expect(field().getAttribute('aria-invalid')).toBe('true');
      fireEvent.change(field(), { target: { value: '18 kn' } });
      expect(field().getAttribute('aria-invalid')).toBeNull();
    } finally {
      vi.useRealTimers();
    }
  });

  it('shows a complaint of the project beside the field in the same way', () => {
    render(<Harness error="The mast would end below the deck." describe="At 10 m." />);
    const ids = field().getAttribute('aria-describedby')?.split(' ') ?? [];
    expect(ids.map((id) => document.getElementById(id)?.textContent)).toEqual([
      'The mast would end below the deck.',
      'At 10 m.',
    ]);
    expect(field().getAttribute('aria-invalid')).toBe('true');
  });

  it('names what is in force when the project holds on to another value', () => {
    render(
      <QuantityField
        label="True wind"
        dimension="speed"
        unit="kn"
        range={speedRange}
        valueSi={50}
        lastGoodSi={toSi(20, 'kn')}
        error="Too much at this height."
        onCommit={() => undefined}
      />,
    );
    expect(screen.getByText('Too much at this height; 20 kn stays in force.')).toBeTruthy();
  });

  it('keeps a text that the store refused', () => {
    render(
      <QuantityField
        label="True wind"
        dimension="speed"
        unit="kn"
        range={speedRange}
        valueSi={toSi(20, 'kn')}
        error="Refused."
        onCommit={() => undefined}
      />,
    );
    fireEvent.change(field(), { target: { value: '30' } });
    fireEvent.blur(field());
    expect(field().value).toBe('30');
  });
});

describe('keys', () => {
  it('steps up and down, ten times as far with Shift, and stops at the range', async () => {
    const commits: number[] = [];
    render(<Harness commits={commits} startSi={toSi(1, 'kn')} />);
    const user = userEvent.setup();
    await user.click(field());
    await user.keyboard('{ArrowUp}');
    expect(field().value).toBe('1.5 kn');
    await user.keyboard('{Shift>}{ArrowUp}{/Shift}');
    expect(field().value).toBe('6.5 kn');
    await user.keyboard('{ArrowDown}');
    expect(field().value).toBe('6 kn');
    await user.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    expect(field().value).toBe('0 kn');
    expect(commits).toHaveLength(5);
  });

  it('brings back the value from before the edit on Escape', async () => {
    const commits: number[] = [];
    render(<Harness commits={commits} />);
    const user = userEvent.setup();
    await user.click(field());
    await user.clear(field());
    await user.type(field(), '18 knots of');
    await user.keyboard('{Escape}');
    expect(field().value).toBe('22 kn');
    expect(commits.at(-1)).toBe(toSi(22, 'kn'));
    expect(field().getAttribute('aria-invalid')).toBeNull();
  });

  it('lets Escape through when there is nothing to bring back', async () => {
    const onKeyDown = vi.fn();
    render(
      <div onKeyDown={onKeyDown}>
        <Harness />
      </div>,
    );
    const user = userEvent.setup();
    await user.click(field());
    await user.keyboard('{Escape}');
    expect(onKeyDown).toHaveBeenCalledTimes(1);
    await user.type(field(), 'x{Escape}');
    expect(onKeyDown).toHaveBeenCalledTimes(2);
    expect(field().value).toBe('22 kn');
  });
});

describe('a value that changes from outside', () => {
  it('replaces the text of a field that has the focus, as undo does', async () => {
    render(<Harness />);
    await retype('18');
    setFromOutside(toSi(22, 'kn'));
    expect(document.activeElement).toBe(field());
    expect(field().value).toBe('22 kn');
  });

  it('leaves half-typed text alone and renames the value in force', async () => {
    render(<Harness />);
    await retype('18 k');
    setFromOutside(toSi(12, 'kn'));
    expect(field().value).toBe('18 k');
    fireEvent.blur(field());
    expect(screen.getByText(/; 12 kn stays in force\.$/)).toBeTruthy();
  });

  it('shows another unit as soon as one is chosen', () => {
    const { rerender } = render(<Harness />);
    rerender(<Harness unit="m/s" />);
    expect(field().value).toBe('11.3178 m/s');
  });
});

describe('an optional quantity', () => {
  function optional(valueSi: number | null, onCommit: (valueSi: number | null) => void) {
    return (
      <QuantityField
        label="True wind"
        required={false}
        dimension="mass"
        unit="kg"
        range={{ fromSi: 0, toSi: 1000 }}
        valueSi={valueSi}
        onCommit={onCommit}
      />
    );
  }

  it('is empty while unknown, and emptied becomes unknown', () => {
    const commits: (number | null)[] = [];
    const { rerender } = render(optional(null, (next) => commits.push(next)));
    expect(field().value).toBe('');
    expect(field().required).toBe(false);
    rerender(optional(14, (next) => commits.push(next)));
    expect(field().value).toBe('14 kg');
    fireEvent.change(field(), { target: { value: ' ' } });
    expect(commits).toEqual([null]);
  });
});

it('never throws, and commits only what can be read and lies in the range', () => {
  const nearNumber = fc
    .tuple(
      fc.constantFrom('', '-', '\u2212', '+'),
      fc.oneof(fc.integer({ min: -200, max: 200 }), between(-1e3, 1e3)),
      fc.constantFrom('', ',', '.', '/', '/4', ',5', 'e3', '\u00bc'),
      fc.constantFrom('', ' kn', 'm/s', ' kg', 'KN', ' "', '%', ' kn kn'),
    )
    .map((parts) => parts.join(''));
  const anyText = fc.oneof(nearNumber, fc.string(), fc.string({ unit: 'binary' }));
  const commits: number[] = [];
  render(<Harness commits={commits} />);
  const input = field();
  fc.assert(
    fc.property(anyText, (text) => {
      commits.length = 0;
      setFromOutside(toSi(22, 'kn'));
      fireEvent.change(input, { target: { value: text } });
      // A one-line input drops line breaks before anybody sees them.
      const typed = text.replace(/[\r\n]/g, '');
      const parsed = parseQuantity(typed, 'speed', 'kn');
      const inRange = parsed.kind === 'quantity' && parsed.valueSi >= 0 && parsed.valueSi <= 60;
      const isNew = inRange && parsed.valueSi !== toSi(22, 'kn');
      expect(commits).toEqual(isNew ? [parsed.valueSi + 0] : []);
      if (typed.trim() !== '' && !inRange) {
        fireEvent.blur(input);
        expect(input.value).toBe(typed);
      }
      fireEvent.keyDown(input, { key: 'Escape' });
    }),
    { numRuns: 300 },
  );
}, 30_000);

describe("a field in the reader's unit", () => {
  afterEach(() => {
    showIn(usualUnits);
  });

  it('shows the value in it and takes a bare number for it', async () => {
    showIn({ ...usualUnits, speed: 'm/s' });
    const commits: number[] = [];
    render(<Harness startSi={12} commits={commits} />);
    expect(field().value).toBe('12 m/s');
    await retype('13,5');
    expect(commits.at(-1)).toBe(13.5);
    fireEvent.blur(field());
    expect(field().value).toBe('13.5 m/s');
  });

  it('still takes any other unit, and shows it in the chosen one', async () => {
    showIn({ ...usualUnits, speed: 'm/s' });
    const commits: number[] = [];
    render(<Harness startSi={12} commits={commits} />);
    await retype('22 kn');
    expect(commits.at(-1)).toBe(toSi(22, 'kn'));
    fireEvent.blur(field());
    expect(field().value).toBe('11.3178 m/s');
  });

  it('says the accepted range and what is in force in it', async () => {
    showIn({ ...usualUnits, speed: 'm/s' });
    render(<Harness startSi={12} />);
    await retype('-3');
    fireEvent.blur(field());
    expect(field().parentElement?.textContent).toContain(
      '"-3" lies outside: a speed from 0 to 60 m/s is accepted; 12 m/s stays in force.',
    );
  });

  it.each([
    ['speed', 'kn', { speed: 'm/s' }, 12, 12.5],
    ['length', 'm', { length: 'ft' }, toSi(12, 'ft'), toSi(12.25, 'ft')],
    ['length', 'mm', { size: 'in' }, toSi(1, 'in'), toSi(1.125, 'in')],
    ['force', 'N', { force: 'kgf' }, toSi(5, 'kgf'), toSi(6, 'kgf')],
    ['power', 'W', { power: 'PS' }, toSi(0.5, 'PS'), toSi(0.51, 'PS')],
  ] as const)(
    'steps a %s that is usually in %s by a round number',
    (dimension, unit, chosen, startSi, nextSi) => {
      showIn({ ...usualUnits, ...chosen });
      const commits: number[] = [];
      const range = { fromSi: 0, toSi: 1000 };
      render(<Harness dimension={dimension} unit={unit} range={range} startSi={startSi} commits={commits} />);
      fireEvent.keyDown(field(), { key: 'ArrowUp' });
      expect(commits.at(-1)).toBeCloseTo(nextSi, 9);
    },
  );

  it('keeps half-typed text when the unit changes under it', async () => {
    const commits: number[] = [];
    const { rerender } = render(<Harness startSi={12} commits={commits} />);
    await retype('22 k');
    fireEvent.blur(field());
    showIn({ ...usualUnits, speed: 'm/s' });
    rerender(<Harness startSi={12} commits={commits} />);
    expect(field().value).toBe('22 k');
    await retype('12 m/s');
    expect(commits.at(-1)).toBe(12);
  });
});
