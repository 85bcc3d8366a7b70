import { describe, expect, it } from 'vitest';
import {
  bandColumn,
  bandWidening,
  fairingBandAt,
  fairingBandNodes,
  isOutsideFairingTable,
} from '../../src/physics/section/fairingBand';

/** The band as it was drawn, kept a second time so that a slip of the pen in the table shows. */
const drawn = [
  '0 0.8 1.15 1.08 0.88 0',
  '6 0.8 1.15 1.09 0.88 2',
  '15 0.75 1.15 1.12 0.92 2',
  '30 0.66 1.15 0.7 1.15 2',
  '45 0.66 1.15 0.7 1.15 0',
  '60 0.75 1.15 0.75 1.15 0',
  '90 0.9 1.22 0.9 1.22 0',
  '135 0.75 1.2 0.75 1.2 0',
  '160 0.6 1.3 0.75 1.2 0',
  '180 0.5 1.5 0.75 1.2 0',
];

describe('the band of the section table', () => {
  it('has the nodes that were drawn, and passes through them', () => {
    expect(fairingBandNodes.map((node) => node.join(' '))).toEqual(drawn);
    for (const [degrees, ...columns] of fairingBandNodes) {
      const found = Object.values(bandColumn).map((column) => fairingBandAt(column, degrees));
      found.forEach((value, i) => {
        expect(value).toBeCloseTo(columns[i] ?? NaN, 12);
      });
    }
  });

  it('is half as wide again from a factor of 1.25 beyond the table, a quarter half way there', () => {
    for (const [ratio, Re] of [
      [0.12 / 1.25, 1e6],
      [0.25 * 1.25, 1e6],
      [0.15, 4e4 / 1.25],
      [0.15, 5e6 * 1.25],
    ] as const) {
      expect(bandWidening(ratio, Re)).toBeCloseTo(1.5, 12);
      expect(isOutsideFairingTable(ratio, Re)).toBe(true);
    }
    expect(bandWidening(0.25 * Math.sqrt(1.25), 1e6)).toBeCloseTo(1.25, 12);
    expect(bandWidening(0.25 * 1.24, 1e6)).toBeLessThan(1.4999);
    for (const [ratio, Re] of [
      [0.12, 4e4],
      [0.25, 5e6],
    ] as const) {
      expect(bandWidening(ratio, Re)).toBe(1);
      expect(isOutsideFairingTable(ratio, Re)).toBe(false);
    }
  });
});
