import { cleanup, render } from '@testing-library/react';
import { useRef } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { useShownSelection } from '../../../src/views/ledger/useShownSelection';

const scrolledTo: (string | undefined)[] = [];

beforeEach(() => {
  scrolledTo.length = 0;
  // Nothing is laid out here: each row says that it is 20 px high, and what is scrolled to is noted.
  vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockReturnValue(20);
  HTMLElement.prototype.scrollIntoView = function note(this: HTMLElement) {
    scrolledTo.push(this.dataset['fittingId']);
  };
});

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  Reflect.deleteProperty(HTMLElement.prototype, 'scrollIntoView');
});

function Rows({ selectedId }: { readonly selectedId: string | null }) {
  const tableRef = useRef<HTMLTableElement>(null);
  useShownSelection(tableRef, selectedId);
  return (
    <table ref={tableRef}>
      <tbody>
        {['boom', 'wires'].map((id) => (
          <tr key={id}>
            <td>
              <button type="button" data-fitting-id={id} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

describe('the selected row', () => {
  it('comes into sight with the ledger, as on the way back from another place', () => {
    render(<Rows selectedId="wires" />);
    expect(scrolledTo).toEqual(['wires']);
  });

  it('comes into sight when it changes, and not at every drawing', () => {
    const { rerender } = render(<Rows selectedId={null} />);
    expect(scrolledTo).toEqual([]);
    rerender(<Rows selectedId="boom" />);
    rerender(<Rows selectedId="boom" />);
    expect(scrolledTo).toEqual(['boom']);
    rerender(<Rows selectedId="wires" />);
    expect(scrolledTo).toEqual(['boom', 'wires']);
  });
});
