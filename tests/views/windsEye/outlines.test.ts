import { describe, expect, it } from 'vitest';
import type { PlanePoint } from '../../../src/charts/windsEye/convexHull';
import { outlineOf } from '../../../src/charts/windsEye/scene';
import { deckLineOf } from '../../../src/project/core/fittingToPhysics';
import { blankFitting } from '../../../src/project/file/blankParts';
import type { ProjectShape } from '../../../src/project/file/schema';
import { solidsOf } from '../../../src/project/picture/solids';
import { demo } from '../ledger/openProjects';
import { solid, stateAt, viewAt } from './pictures';

const degree = Math.PI / 180;
/** Round things have 24 corners: so much of the circle is in them. */
const ofCircle = (24 / (2 * Math.PI)) * Math.sin((2 * Math.PI) / 24);

function areaSeen(one: ReturnType<typeof solid>, view: ReturnType<typeof viewAt>): number {
  return polygonArea(outlineOf(one, view));
}

/** Area of a polygon whose corners stand in order. */
function polygonArea(corners: readonly PlanePoint[]): number {
  const twice = corners.map(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length] ?? [ax, ay];
    return ax * by - bx * ay;
  });
  return Math.abs(twice.reduce((sum, part) => sum + part, 0)) / 2;
}

describe('the outline of a shape along the wind', () => {
  it.each([0, 20, 45, 70, 90])('of a bar at %d° to it has d L sin and its end disc', (angleDeg) => {
    const bar = solid(
      'bar',
      [
        [0, 0, 1],
        [2 * Math.cos(angleDeg * degree), 0, 1 + 2 * Math.sin(angleDeg * degree)],
      ],
      { thicknessM: 0.1 },
    );
    const side = 0.1 * 2 * Math.sin(angleDeg * degree);
    const end = ofCircle * (Math.PI / 4) * 0.01 * Math.cos(angleDeg * degree);
    expect(areaSeen(bar, viewAt({ angleDeg: 0 }))).toBeCloseTo(side + end, 9);
  });

  it.each([0, 30, 60, 90, 135])('of a box in wind from %d° is the sum of its faces', (angleDeg) => {
    const corners = [0, 2].flatMap((x) => [0, 0.8].flatMap((y) => [1, 1.5].map((z) => [x, y, z] as const)));
    const ahead = 0.8 * 0.5 * Math.abs(Math.cos(angleDeg * degree));
    const abeam = 2 * 0.5 * Math.abs(Math.sin(angleDeg * degree));
    expect(areaSeen(solid('cloud', corners), viewAt({ angleDeg }))).toBeCloseTo(ahead + abeam, 12);
  });

  it('of a box on a heeled boat shows its top or its bottom too', () => {
    const corners = [0, 2].flatMap((x) => [0, 0.8].flatMap((y) => [1, 1.5].map((z) => [x, y, z] as const)));
    const [across, along] = [Math.cos(25 * degree), Math.sin(25 * degree)];
    expect(areaSeen(solid('cloud', corners), viewAt({ angleDeg: 90, heelDeg: 25 }))).toBeCloseTo(
      2 * 0.5 * across + 2 * 0.8 * along,
      12,
    );
  });

  it('of a sphere is its disc from everywhere', () => {
    const ball = solid('ball', [[1, 2, 3]], { thicknessM: 0.6 });
    for (const angleDeg of [0, 37, 180])
      expect(areaSeen(ball, viewAt({ angleDeg, heelDeg: 12 }))).toBeCloseTo(
        ofCircle * (Math.PI / 4) * 0.36,
        12,
      );
  });
});

const size = (m: number) => ({ m, basis: 'measured' }) as const;
const parts = { coefficient: null, friction: 'model', ends: ['free', 'free'] } as const;

function sectionFitting(kind: 'ellipticalBar' | 'rectangularBar' | 'fairing', angleDeg: number) {
  const section = { chord: size(0.4), thickness: size(0.1), ...parts };
  const direction = { kind: 'fixed', angleDeg } as const;
  const shape = (
    kind === 'rectangularBar'
      ? { kind, ...section, direction, cornerRadiusM: 0 }
      : { kind, ...section, direction }
  ) as ProjectShape;
  return blankFitting({
    id: 's',
    name: 'Section',
    zoneId: 'bow',
    shape,
    placement: {
      kind: 'endPoints',
      start: { xM: 1, yM: 0, zM: 2 },
      end: { xM: 1, yM: 0, zM: 3.5 },
      basis: 'measured',
      row: null,
      pair: false,
    },
  });
}

function sectionArea(kind: 'ellipticalBar' | 'rectangularBar' | 'fairing', noseDeg: number, windDeg: number) {
  const [own, ...others] = solidsOf(
    sectionFitting(kind, noseDeg),
    deckLineOf(demo().boat),
    stateAt({ angleDeg: windDeg }),
  );
  if (own === undefined || others.length > 0) throw new Error('one piece is expected');
  return areaSeen(own, viewAt({ angleDeg: windDeg }));
}

describe('the outline of a section at an angle', () => {
  // On starboard tack the wind comes from starboard, and a nose to port turns away from it.
  it.each([
    [0, 0],
    [0, 30],
    [20, 30],
    [-30, 30],
    [-10, 100],
  ])('nose at %d° and wind from %d° is as wide as the section square to the wind', (noseDeg, windDeg) => {
    const incidence = (windDeg + noseDeg) * degree;
    const [along, across] = [Math.abs(Math.sin(incidence)), Math.abs(Math.cos(incidence))];
    expect(sectionArea('rectangularBar', noseDeg, windDeg)).toBeCloseTo(
      1.5 * (0.4 * along + 0.1 * across),
      12,
    );
    // Of the ellipse 24 corners are drawn.
    const ellipse = 1.5 * Math.hypot(0.4 * along, 0.1 * across);
    expect(sectionArea('ellipticalBar', noseDeg, windDeg)).toBeLessThanOrEqual(ellipse + 1e-12);
    expect(sectionArea('ellipticalBar', noseDeg, windDeg)).toBeGreaterThan(0.99 * ellipse);
  });

  it('is a fairing’s thickness nose to the wind and its chord beam-on', () => {
    expect(sectionArea('fairing', 0, 0)).toBeGreaterThan(0.99 * 1.5 * 0.1);
    expect(sectionArea('fairing', 0, 0)).toBeLessThanOrEqual(1.5 * 0.1 * 1.001);
    expect(sectionArea('fairing', 0, 90)).toBeCloseTo(1.5 * 0.4, 9);
  });
});
