import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dnvEndFactor, dnvEndNodes } from '../../src/physics/section/endEffect';
import { prepareEllipse } from '../../src/physics/section/ellipseSection';
import { fairingRowsAt, placeRow, rowValue } from '../../src/physics/section/fairingRows';
import { fairingTable } from '../../src/physics/section/fairingTable';
import {
  emptyStrip,
  type PreparedSection,
  type StripCoefficients,
} from '../../src/physics/section/memberFamily';
import {
  plateEndFactor,
  plateEndNodes,
  sharpRectangleCoefficient,
  sharpRectangleNodes,
} from '../../src/physics/section/rectangle';
import { prepareRectangle } from '../../src/physics/section/rectangleSection';
import { strandedCableCoefficient } from '../../src/physics/section/wire';
import { strandedCableNodes } from '../../src/physics/section/wireTable';
import { between, degree } from './arbitraries';

const drags = ['drag', 'dragLow', 'dragHigh'] as const;
const lifts = ['lift', 'liftLow', 'liftHigh'] as const;
const incidence = between(-180, 180).map((deg) => deg * degree);
const logReynolds = between(3, 6.8);

/** A section of 1 m chord, two-dimensional, at a chord Reynolds number. */
function stripOf(section: PreparedSection, log: number, incidenceRad: number): StripCoefficients {
  const out = emptyStrip();
  section.strip(
    {
      crossSpeedMs: 10 ** log,
      inclinationCosine: 1,
      kinematicViscosityM2S: 1,
      effectiveSlenderness: Infinity,
      incidenceRad,
    },
    out,
    true,
  );
  return out;
}

function expectGentle(here: StripCoefficients, there: StripCoefficients): void {
  for (const key of drags) expect(Math.abs(there[key] - here[key]), key).toBeLessThanOrEqual(0.02);
  for (const key of lifts) expect(Math.abs(there[key] - here[key]), key).toBeLessThanOrEqual(0.08);
}

describe('a section of other proportions', () => {
  it('rectangle: moves by at most 0.02 in drag and 0.08 in lift per 0.001 of thickness ratio or of corner radius', () => {
    fc.assert(
      fc.property(
        between(0.02, 1.9),
        between(0, 0.98),
        logReynolds,
        incidence,
        (ratio, round, log, angle) => {
          const radius = (share: number): number => (share * Math.min(ratio, 1)) / 2;
          const here = stripOf(prepareRectangle(1, ratio, radius(round), null), log, angle);
          expectGentle(here, stripOf(prepareRectangle(1, ratio + 1e-3, radius(round), null), log, angle));
          expectGentle(here, stripOf(prepareRectangle(1, ratio, radius(round + 1e-3), null), log, angle));
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('ellipse: moves by as little per 0.001 of thickness ratio, and per 0.1 deg in both states', () => {
    fc.assert(
      fc.property(between(0.02, 0.999), logReynolds, incidence, (ratio, log, angle) => {
        const section = prepareEllipse(1, ratio, null);
        const here = stripOf(section, log, angle);
        expectGentle(here, stripOf(prepareEllipse(1, ratio + 1e-3, null), log, angle));
        expectGentle(here, stripOf(section, log, angle + 0.1 * degree));
      }),
      { numRuns: 1000 },
    );
  });

  it('ellipse: has no end effect when it is long', () => {
    fc.assert(
      fc.property(between(0.05, 1), logReynolds, incidence, (ratio, log, angle) => {
        const section = prepareEllipse(1, ratio, null);
        for (const method of ['dnv', 'en'] as const) {
          expect(section.endFactor(method, 1e4, log, angle)).toBe(1);
          expect(section.endFactor(method, 199.999, log, angle)).toBeGreaterThan(0.999);
        }
      }),
    );
  });
});

/** Largest departure of a curve from the nodes it was made from, as a fraction of the node. */
function largestDeparture(
  nodes: readonly (readonly [number, number])[],
  curve: (x: number) => number,
): number {
  return Math.max(...nodes.map(([x, value]) => Math.abs(curve(x) / value - 1)));
}

describe('smoothing leaves the nodes of a table', () => {
  it('not at all on a rectangle, a plate’s ends and stranded cables', () => {
    expect(largestDeparture(sharpRectangleNodes, sharpRectangleCoefficient)).toBeLessThan(1e-12);
    expect(largestDeparture(plateEndNodes, plateEndFactor)).toBeLessThan(1e-12);
    expect(largestDeparture(strandedCableNodes, strandedCableCoefficient)).toBeLessThan(1e-12);
  });

  it('not at all at the ends of a bar, outside the ramp between its two columns', () => {
    const subcritical = dnvEndNodes.map(([x, below]) => [x, below] as const);
    const supercritical = dnvEndNodes.map(([x, , above]) => [x, above] as const);
    const at = (Re: number) => (slenderness: number) => dnvEndFactor(slenderness, Math.log10(Re));
    expect(largestDeparture(subcritical, at(1.4e5))).toBeLessThan(1e-12);
    expect(largestDeparture(supercritical, at(2.9e5))).toBeLessThan(1e-12);
  });

  it('not at all in the drag of the five sections at their own Reynolds numbers, and in lift only where separated', () => {
    let largestDrag = 0;
    let largestLift = 0;
    for (const { thicknessRatio, rows } of fairingTable) {
      const table = fairingRowsAt(thicknessRatio);
      for (const { reynolds, drag, lift } of rows) {
        const place = placeRow(reynolds, { row: 0, share: 0 });
        for (let i = 0; i < drag.length; i += 2) {
          const printed = drag[i + 1] ?? NaN;
          largestDrag = Math.max(
            largestDrag,
            Math.abs(rowValue(table.drag, place, drag[i] ?? NaN) / printed - 1),
          );
        }
        for (let i = 2; i < lift.length; i += 2) {
          const [deg, printed] = [lift[i] ?? NaN, lift[i + 1] ?? NaN];
          const used = rowValue(table.lift, place, deg);
          const leastSeparated = 0.45 * Math.sin(2 * deg * degree);
          if (printed > leastSeparated) largestLift = Math.max(largestLift, Math.abs(used / printed - 1));
        }
      }
    }
    expect(largestDrag).toBeLessThan(1e-9);
    expect(largestLift).toBeLessThan(1e-9);
  });
});
