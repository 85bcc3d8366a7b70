import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { StillInput } from '../../../src/ui/fields/StillInput';

afterEach(cleanup);

/** What is written to the input while it is drawn again, attribute by attribute. */
async function writtenBy(draw: () => void): Promise<readonly (string | null)[]> {
  const seen: (string | null)[] = [];
  const observer = new MutationObserver((records) => {
    seen.push(...records.map(({ attributeName }) => attributeName));
  });
  observer.observe(document.body, { subtree: true, attributes: true });
  draw();
  await Promise.resolve();
  observer.disconnect();
  return seen;
}

describe('an input that is left alone', () => {
  it('is not written to when only its functions are others', async () => {
    const field = (onChange: () => void) => <StillInput type="text" value="22 kn" onChange={onChange} />;
    const { rerender } = render(field(() => undefined));
    const written = await writtenBy(() => {
      rerender(field(() => undefined));
    });
    expect(written).toEqual([]);
  });

  it('is written to when its text is another, which shows that the test above can fail', async () => {
    const field = (value: string) => <StillInput type="text" value={value} onChange={() => undefined} />;
    const { rerender } = render(field('22 kn'));
    const written = await writtenBy(() => {
      rerender(field('23 kn'));
    });
    expect(written).not.toEqual([]);
    expect(screen.getByRole<HTMLInputElement>('textbox').value).toBe('23 kn');
  });

  it('calls the functions of its last drawing, each with its event', () => {
    const [first, last] = [vi.fn(), vi.fn()];
    const field = (called: typeof first) => (
      <StillInput
        type="text"
        value="22 kn"
        onChange={({ target }) => {
          called('change', target.value);
        }}
        onFocus={({ type }) => {
          called(type);
        }}
        onBlur={({ type }) => {
          called(type);
        }}
        onKeyDown={({ key }) => {
          called('key', key);
        }}
      />
    );
    const { rerender } = render(field(first));
    rerender(field(last));
    const input = screen.getByRole('textbox');
    fireEvent.focus(input);
    fireEvent.change(input, { target: { value: '23 kn' } });
    fireEvent.keyDown(input, { key: 'Enter' });
    fireEvent.blur(input);
    expect(first).not.toHaveBeenCalled();
    expect(last.mock.calls).toEqual([['focus'], ['change', '23 kn'], ['key', 'Enter'], ['blur']]);
    expect(screen.getByRole<HTMLInputElement>('textbox').value).toBe('22 kn');
  });
});
