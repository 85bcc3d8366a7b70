import { expect, it } from 'vitest';
import { counterHatchPath, hatchPath } from '../../../src/charts/hatchPath';

const box = { x: 10, y: 20, widthPx: 12, heightPx: 8 };

it('strokes rise at 45 degrees and are cut at the edges of the box', () => {
  // Feet at -4, 0, 4, 8 from the left edge, each 8 wide where the box lets it.
  expect(hatchPath(box, 4)).toBe('M10 24L14 20M10 28L18 20M14 28L22 20M18 28L22 24');
});

it('counter-strokes are their mirror image', () => {
  expect(counterHatchPath(box, 4)).toBe('M10 24L14 28M10 20L18 28M14 20L22 28M18 20L22 24');
});

it('an empty box has no strokes', () => {
  expect(hatchPath({ ...box, widthPx: 0 }, 4)).toBe('');
});
