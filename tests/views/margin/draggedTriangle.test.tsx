import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { windTriangleGeometry } from '../../../src/charts/windTriangleGeometry';
import type { ConditionSummary } from '../../../src/project/ledger/conditionSummary';
import { currentHistory, useAppStore } from '../../../src/state/appStore';
import { ledgerOf } from '../../../src/state/ledgerOf';
import { fromSi } from '../../../src/units/convert';
import { MarginPane } from '../../../src/views/margin/MarginPane';
import { demo, openInStore } from '../ledger/openProjects';

vi.setConfig({ testTimeout: 20_000 });

beforeEach(() => {
  openInStore(demo());
  // The test page draws nothing: it has no capture and no boxes, and a drawing counts in its own pixels.
  Object.assign(Element.prototype, { setPointerCapture: () => undefined });
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

function summary(): ConditionSummary {
  const { project, question } = useAppStore.getState();
  const found = project === null ? undefined : ledgerOf(project, question)?.parts[0]?.summary;
  if (found === undefined) throw new Error('no condition');
  return found;
}

function geometry() {
  return windTriangleGeometry(summary(), { widthPx: 164, heightPx: 156 });
}

function drag(name: string, path: readonly { readonly x: number; readonly y: number }[], pauseMs = 0): void {
  const handle = screen.getByRole('slider', { name });
  const [from, ...rest] = path;
  fireEvent.pointerDown(handle, { button: 0, clientX: from?.x, clientY: from?.y });
  for (const { x, y } of rest) {
    if (pauseMs > 0) vi.advanceTimersByTime(pauseMs);
    fireEvent.pointerMove(handle, { clientX: x, clientY: y });
  }
  fireEvent.pointerUp(handle);
}

describe('the wind triangle', () => {
  it('gives the wind that the hand points at, and one step to undo however long the hand rests', () => {
    vi.useFakeTimers();
    render(<MarginPane />);
    const before = summary();
    const { boat, trueFrom, pxPerMs } = geometry();
    // Away from the boat along the wind by a third, in two moves with a rest between them.
    const out = (share: number) => ({
      x: boat.x + share * (trueFrom.x - boat.x),
      y: boat.y + share * (trueFrom.y - boat.y),
    });
    drag('True wind', [out(1), out(1.1), out(4 / 3)], 3000);
    const after = summary();
    expect(pxPerMs).toBeGreaterThan(1);
    expect(fromSi(after.trueWindAt10Ms, 'kn')).toBeCloseTo(fromSi(before.trueWindAt10Ms, 'kn') * (4 / 3), 0);
    expect(fromSi(after.trueWindAngleRad, 'deg')).toBeCloseTo(46, 0);
    expect(after.condition.boatSpeedMs).toBe(before.condition.boatSpeedMs);
    expect(currentHistory().undoLabel).toBe('Change the true wind of Upwind, one reef');
    act(() => {
      useAppStore.getState().undo();
    });
    expect(summary().condition).toEqual(before.condition);
    expect(currentHistory().canUndo).toBe(false);
  });

  it('gives the boat speed, and the true wind stays', () => {
    render(<MarginPane />);
    const before = summary();
    const { apparentFrom, pxPerMs } = geometry();
    drag('Boat speed', [apparentFrom, { x: apparentFrom.x, y: apparentFrom.y - 2 * pxPerMs }]);
    expect(summary().condition.boatSpeedMs).toBeCloseTo(before.condition.boatSpeedMs + 2, 1);
    expect(summary().condition.wind).toEqual(before.condition.wind);
  });

  it('moves a reading to what the instrument would show, and the true wind stays where only the boat moves', () => {
    useAppStore.getState().chooseBasis({ kind: 'condition', conditionId: 'reach' });
    render(<MarginPane />);
    const before = summary();
    const { apparentFrom, pxPerMs } = geometry();
    drag('Boat speed', [apparentFrom, { x: apparentFrom.x, y: apparentFrom.y - 2 * pxPerMs }]);
    const after = summary();
    expect(after.condition.wind.kind).toBe('instrument');
    expect(after.condition.wind).not.toEqual(before.condition.wind);
    expect(after.trueWindAt10Ms).toBeCloseTo(before.trueWindAt10Ms, 4);
    expect(after.trueWindAngleRad).toBeCloseTo(before.trueWindAngleRad, 5);
  });

  it('is moved with the arrow keys and says what it is', () => {
    render(<MarginPane />);
    const wind = screen.getByRole('slider', { name: 'True wind' });
    fireEvent.keyDown(wind, { key: 'ArrowUp' });
    expect(fromSi(summary().trueWindAt10Ms, 'kn')).toBeCloseTo(22, 6);
    fireEvent.keyDown(wind, { key: 'ArrowRight', shiftKey: true });
    expect(fromSi(summary().trueWindAngleRad, 'deg')).toBeCloseTo(56, 6);
    expect(wind.getAttribute('aria-valuetext')).toMatch(
      /^22.0\skn at 10 m, 56.0° off the course, starboard tack$/,
    );
    const boat = screen.getByRole('slider', { name: 'Boat speed' });
    fireEvent.keyDown(boat, { key: 'ArrowDown' });
    expect(boat.getAttribute('aria-valuenow')).toBe('8.6');
    expect(boat.getAttribute('aria-valuetext')).toMatch(/^8.60\skn$/);
  });
});

describe('what may be changed', () => {
  it('sits on a line that leads to its field; what follows from it does not', () => {
    render(<MarginPane />);
    fireEvent.click(screen.getByRole('button', { name: /^Heel: 19.0°/ }));
    expect(useAppStore.getState()).toMatchObject({ sidePane: 'condition', openField: 'heelDeg' });
    fireEvent.click(screen.getByRole('button', { name: /^Wind law: log/ }));
    expect(useAppStore.getState().sidePane).toBe('methods');
    act(() => {
      useAppStore.getState().chooseBasis({ kind: 'condition', conditionId: 'reach' });
    });
    expect(screen.queryByRole('button', { name: /^True wind:/ })).toBeNull();
    fireEvent.click(screen.getByRole('button', { name: /^Instruments:/ }));
    expect(useAppStore.getState()).toMatchObject({ sidePane: 'condition', openField: 'wind.speedMs' });
  });

  it('holds for the hours of a course', () => {
    useAppStore.getState().chooseBasis({ kind: 'profile' });
    render(<MarginPane />);
    fireEvent.click(screen.getByRole('button', { name: /^Hours of Upwind, one reef/ }));
    expect(useAppStore.getState().openField).toBe('profile.upwind');
  });
});
