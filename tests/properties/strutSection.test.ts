import { describe, expect, it } from 'vitest';
import {
  halfThickness,
  halfThicknessSlopes,
  perimeterOverChord,
} from '../../src/physics/section/fairingOutline';
import { innerBoundary, outerBoundary, type BoundaryNode } from '../../src/physics/strut/boundary';
import {
  aboutCentroid,
  boundaryLengthM,
  regionMoments,
  without,
  type RegionMoments,
} from '../../src/physics/strut/regionMoments';
import {
  chordOf,
  emptyPlace,
  flattestRadiusM,
  thicknessOf,
  upperPlace,
  type SectionOutline,
} from '../../src/physics/strut/sectionOutline';
import { ellipse, fairing, round } from './outlines';

function solidOf(outline: SectionOutline): RegionMoments {
  return regionMoments(outerBoundary(outline));
}

function wallOf(outline: SectionOutline, wallM: number): RegionMoments {
  return without(solidOf(outline), regionMoments(innerBoundary(outline, wallM)));
}

function expectClose(actual: number, expected: number, relative: number): void {
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(relative);
}

function simpson(curve: (x: number) => number, from: number, to: number, pieces = 20_000): number {
  const h = (to - from) / pieces;
  let sum = curve(from) + curve(to);
  for (let i = 1; i < pieces; i += 1) sum += (i % 2 === 1 ? 4 : 2) * curve(from + i * h);
  return (sum * h) / 3;
}

/** Half thickness over x, written apart from the outline. */
function halfAt(outline: SectionOutline, x: number): number {
  const [chord, thickness] = [chordOf(outline), thicknessOf(outline)];
  if (outline.kind === 'fairing') return chord * halfThickness(thickness / chord, x / chord);
  return (thickness / 2) * Math.sqrt(Math.max(1 - (2 * (x / chord) - 1) ** 2, 0));
}

const sections = [
  ['tube', round(0.05)],
  ['ellipse 2:1', ellipse(0.1, 0.05)],
  ['ellipse 5:1', ellipse(0.2, 0.04)],
  ['fairing 0.12', fairing(0.3, 0.036)],
  ['fairing 0.25', fairing(0.1, 0.025)],
  ['fairing 0.40', fairing(0.1, 0.04)],
] as const;

describe('a solid section', () => {
  it.each([
    [0.1, 0.1],
    [0.1, 0.05],
    [0.3, 0.03],
  ])('of elliptical outline %d x %d m has the area and moments of the closed form', (chord, thickness) => {
    const solid = solidOf(ellipse(chord, thickness));
    const { centroidXM, aboutChordM4, acrossChordM4 } = aboutCentroid(solid);
    expectClose(solid.areaM2, (Math.PI * chord * thickness) / 4, 1e-12);
    expectClose(centroidXM, chord / 2, 1e-12);
    expectClose(aboutChordM4, (Math.PI * chord * thickness ** 3) / 64, 1e-12);
    expectClose(acrossChordM4, (Math.PI * chord ** 3 * thickness) / 64, 1e-11);
  });

  it.each(sections)('has by Green’s theorem what plain quadrature over its chord gives: %s', (_, outline) => {
    const chord = chordOf(outline);
    const over = (weight: (x: number, y: number) => number): number =>
      // x = c s^2 takes the vertical nose away; an ellipse's tail needs the same from its other end.
      simpson(
        (a) => {
          const x = (chord * (1 - Math.cos(a))) / 2;
          return weight(x, halfAt(outline, x)) * ((chord * Math.sin(a)) / 2);
        },
        0,
        Math.PI,
      );
    const solid = solidOf(outline);
    expectClose(
      solid.areaM2,
      over((_x, y) => 2 * y),
      1e-9,
    );
    expectClose(
      solid.firstXM3,
      over((x, y) => 2 * x * y),
      1e-9,
    );
    expectClose(
      solid.squareXM4,
      over((x, y) => 2 * x * x * y),
      1e-9,
    );
    expectClose(
      solid.squareYM4,
      over((_x, y) => (2 * y ** 3) / 3),
      1e-9,
    );
  });

  it('of fairing outline has the area of its polynomial, integrated term by term', () => {
    const exact = 10 * ((2 / 3) * 0.2969 - 0.126 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1015 / 5);
    for (const [chord, thickness] of [
      [0.1, 0.012],
      [0.3, 0.06],
      [1, 0.4],
    ] as const) {
      expectClose(solidOf(fairing(chord, thickness)).areaM2, exact * chord * thickness, 1e-12);
    }
  });

  it.each(sections)('has the perimeter of a fine polygon: %s', (_, outline) => {
    const points = 20_000;
    const at = (i: number): { x: number; y: number } => {
      const x = (chordOf(outline) * (1 - Math.cos((Math.PI * i) / points))) / 2;
      return { x, y: halfAt(outline, x) };
    };
    let length = at(points).y;
    for (let i = 0; i < points; i += 1) length += Math.hypot(at(i + 1).x - at(i).x, at(i + 1).y - at(i).y);
    expectClose(boundaryLengthM(outerBoundary(outline)), 2 * length, 1e-7);
  });

  it('is closed in to a part in 1e9 by its perimeter, an ellipse of 1:12 too', () => {
    // Equal steps round a closed, smooth curve converge faster than any power of their number.
    const [a, b, steps] = [0.06, 0.005, 4000];
    let length = 0;
    for (let i = 0; i < steps; i += 1) {
      const u = (2 * Math.PI * i) / steps;
      length += (2 * Math.PI * Math.hypot(a * Math.sin(u), b * Math.cos(u))) / steps;
    }
    expectClose(boundaryLengthM(outerBoundary(ellipse(2 * a, 2 * b))), length, 1e-9);
  });

  it('of fairing outline has the perimeter that its friction is computed with', () => {
    expectClose(boundaryLengthM(outerBoundary(fairing(1, 0.25))), perimeterOverChord(0.25), 1e-4);
  });
});

describe('a wall', () => {
  it.each([0.0001, 0.002, 0.01, 0.0249])('round a tube is the exact ring: %d m', (wall) => {
    const tube = aboutCentroid(wallOf(round(0.05), wall));
    const inner = 0.025 - wall;
    expectClose(wallOf(round(0.05), wall).areaM2, Math.PI * (0.025 ** 2 - inner ** 2), 1e-10);
    expectClose(tube.weakM4, (Math.PI / 4) * (0.025 ** 4 - inner ** 4), 1e-9);
    expectClose(tube.acrossChordM4, tube.aboutChordM4, 1e-9);
  });

  it('tends to the thin ring: 2 pi r w and pi r^3 w', () => {
    const [wall, radius] = [1e-5, 0.05];
    const thin = wallOf(round(2 * radius), wall);
    expectClose(thin.areaM2, 2 * Math.PI * radius * wall, 2 * (wall / radius));
    expectClose(aboutCentroid(thin).weakM4, Math.PI * radius ** 3 * wall, 2 * (wall / radius));
  });

  it.each([
    ['ellipse', ellipse(0.1, 0.05)],
    ['slender ellipse', ellipse(0.1, 0.02)],
    ['tube', round(0.05)],
  ] as const)('round a convex outline has the area S w - pi w^2: %s', (_, outline) => {
    for (const wall of [0.0001, 0.0005, 0.0019]) {
      const exact = boundaryLengthM(outerBoundary(outline)) * wall - Math.PI * wall ** 2;
      expectClose(wallOf(outline, wall).areaM2, exact, 1e-9);
    }
  });

  it('round a fairing tends to perimeter times wall, its blunt tail closed', () => {
    for (const ratio of [0.12, 0.25, 0.5]) {
      const outline = fairing(0.1, 0.1 * ratio);
      const wall = 1e-6;
      expectClose(wallOf(outline, wall).areaM2, boundaryLengthM(outerBoundary(outline)) * wall, 2e-4);
    }
  });

  it('round a thin ellipse tends to the line integrals of y^2 and x^2 along it', () => {
    const [a, b, wall] = [0.05, 0.02, 1e-6];
    const stretch = (u: number): number => Math.hypot(a * Math.sin(u), b * Math.cos(u));
    const aboutChord = simpson((u) => (b * Math.sin(u)) ** 2 * stretch(u), 0, 2 * Math.PI);
    const acrossChord = simpson((u) => (a * Math.cos(u)) ** 2 * stretch(u), 0, 2 * Math.PI);
    const thin = aboutCentroid(wallOf(ellipse(2 * a, 2 * b), wall));
    expectClose(thin.aboutChordM4, aboutChord * wall, 1e-3);
    expectClose(thin.acrossChordM4, acrossChord * wall, 1e-3);
  });

  it.each([
    ['fairing, thin', fairing(0.1, 0.025), 0.001],
    ['fairing, thick', fairing(0.1, 0.025), 0.004],
    ['fairing, wall over nose radius', fairing(0.1, 0.016), 0.005],
    ['fairing, stout, wall between its radii behind the nose', fairing(0.1, 0.045), 0.0215],
    ['ellipse, wall over end radius', ellipse(0.1, 0.02), 0.004],
  ] as const)(
    'holds the points that lie no deeper than it, tail and nose included: %s',
    (_, outline, wall) => {
      const counted = byCounting(outline, wall);
      const wallMoments = wallOf(outline, wall);
      expectClose(wallMoments.areaM2, counted.area, 0.005);
      expectClose(wallMoments.firstXM3 / wallMoments.areaM2, counted.firstX / counted.area, 0.005);
      expectClose(wallMoments.squareYM4, counted.squareY, 0.005);
      expectClose(wallMoments.squareXM4, counted.squareX, 0.005);
    },
  );

  it('leaves an ever smaller hole the thicker it is, folds of the inside and all', () => {
    for (const ratio of [0.08, 0.25, 0.45, 0.5]) {
      const outline = fairing(1, ratio);
      let [area, square] = [Infinity, Infinity];
      for (let wall = 0.002 * ratio; wall < 0.5 * ratio; wall += 0.0005 * ratio) {
        const hole = regionMoments(innerBoundary(outline, wall));
        expect(hole.areaM2).toBeLessThan(area);
        expect(hole.squareYM4).toBeLessThan(square);
        // No step: per two thousandth of the thickness the hole loses its perimeter times that.
        expect(Math.min(area, 1) - hole.areaM2).toBeLessThan(
          wall === 0.002 * ratio ? 1 : 2.5 * 0.0005 * ratio,
        );
        [area, square] = [hole.areaM2, hole.squareYM4];
      }
    }
  });

  it('of half the thickness fills a section', () => {
    for (const [, outline] of sections) {
      expectClose(wallOf(outline, thicknessOf(outline) / 2).areaM2, solidOf(outline).areaM2, 1e-4);
      expect(innerBoundary(outline, 0.51 * thicknessOf(outline))).toEqual([]);
    }
  });
});

/** Second route: cells of a grid whose middle lies inside, and within the wall of a fine polygon. */
function byCounting(outline: SectionOutline, wall: number) {
  const [chord, thickness] = [chordOf(outline), thicknessOf(outline)];
  const polygon = Array.from({ length: 601 }, (_, i) => {
    const x = (chord * (1 - Math.cos((Math.PI * i) / 600))) / 2;
    return { x, y: halfAt(outline, x) };
  });
  polygon.push({ x: chord, y: 0 });
  const [columns, rows] = [600, 200];
  const [dx, dy] = [chord / columns, (0.51 * thickness) / rows];
  const sums = { area: 0, firstX: 0, squareX: 0, squareY: 0 };
  for (let i = 0; i < columns; i += 1) {
    const x = (i + 0.5) * dx;
    const near = polygon.filter((p) => Math.abs(p.x - x) <= wall + 2 * dx);
    for (let j = 0; j < rows; j += 1) {
      const y = (j + 0.5) * dy;
      if (y > halfAt(outline, x) || distance(near, x, y) > wall) continue;
      sums.area += 2 * dx * dy;
      sums.firstX += 2 * x * dx * dy;
      sums.squareX += 2 * x * x * dx * dy;
      sums.squareY += 2 * y * y * dx * dy;
    }
  }
  return sums;
}

function distance(polygon: readonly { x: number; y: number }[], x: number, y: number): number {
  let least = Infinity;
  polygon.forEach((q, i) => {
    const p = polygon[i - 1] ?? q;
    const [ex, ey] = [q.x - p.x, q.y - p.y];
    const length = ex * ex + ey * ey;
    const share = length === 0 ? 0 : Math.min(Math.max(((x - p.x) * ex + (y - p.y) * ey) / length, 0), 1);
    least = Math.min(least, Math.hypot(x - p.x - share * ex, y - p.y - share * ey));
  });
  return least;
}

describe('moments about turned axes', () => {
  const turned = (boundary: readonly BoundaryNode[], angle: number): BoundaryNode[] =>
    boundary.map(({ xM, yM, dxM, dyM }) => ({
      xM: xM * Math.cos(angle) - yM * Math.sin(angle),
      yM: xM * Math.sin(angle) + yM * Math.cos(angle),
      dxM: dxM * Math.cos(angle) - dyM * Math.sin(angle),
      dyM: dxM * Math.sin(angle) + dyM * Math.cos(angle),
    }));

  it.each([0.3, 1, 2.5])('keep the weak axis and gain a product: %d rad', (angle) => {
    const outline = fairing(0.1, 0.025);
    const straight = aboutCentroid(solidOf(outline));
    const moved = aboutCentroid(regionMoments(turned(outerBoundary(outline), angle)));
    expectClose(moved.weakM4, straight.weakM4, 1e-9);
    expectClose(straight.weakM4, straight.aboutChordM4, 1e-12);
    const difference = straight.acrossChordM4 - straight.aboutChordM4;
    expectClose(moved.productM4, (difference * Math.sin(2 * angle)) / 2, 1e-9);
    expect(Math.hypot(moved.centroidXM, moved.centroidYM)).toBeCloseTo(straight.centroidXM, 12);
  });

  it('a triangle of straight sides has its textbook product, b^2 h^2 / 72 of the right-angled one', () => {
    // Simpson's three points a side, exact for cubics.
    const side = (px: number, py: number, qx: number, qy: number): BoundaryNode[] =>
      [
        { share: 0, weight: 1 / 6 },
        { share: 0.5, weight: 4 / 6 },
        { share: 1, weight: 1 / 6 },
      ].map(({ share, weight }) => ({
        xM: px + share * (qx - px),
        yM: py + share * (qy - py),
        dxM: (qx - px) * weight,
        dyM: (qy - py) * weight,
      }));
    const sides = [...side(0, 0, 0.3, 0), ...side(0.3, 0, 0, 0.2), ...side(0, 0.2, 0, 0)];
    const { aboutChordM4, acrossChordM4, productM4 } = aboutCentroid(regionMoments(sides));
    expectClose(aboutChordM4, (0.3 * 0.2 ** 3) / 36, 1e-9);
    expectClose(acrossChordM4, (0.3 ** 3 * 0.2) / 36, 1e-9);
    expectClose(productM4, -(0.3 ** 2 * 0.2 ** 2) / 72, 1e-9);
  });
});

describe('an outline', () => {
  it('has the slopes that its half thickness has', () => {
    for (const r of [0.01, 0.2, 0.5, 0.9, 1]) {
      const [first, second] = halfThicknessSlopes(0.2, r);
      const h = 1e-4;
      const at = (shift: number): number => halfThickness(0.2, (r + shift) ** 2);
      expect(first).toBeCloseTo((at(h) - at(-h)) / (2 * h), 6);
      expect(second).toBeCloseTo((at(h) - 2 * at(0) + at(-h)) / (h * h), 5);
    }
  });

  it('has at its nose the radius of the four-digit sections, 1.1019 t^2 / c', () => {
    const place = upperPlace(fairing(1, 0.2), 1e-6, emptyPlace());
    expect(1 / place.curvaturePerM).toBeCloseTo(1.1019 * 0.2 ** 2, 4);
  });

  it('is an ellipse’s flattest in the middle: c^2 / (2 t), and a circle’s radius everywhere', () => {
    expectClose(flattestRadiusM(ellipse(0.1, 0.04)), 0.125, 1e-12);
    expectClose(flattestRadiusM(round(0.1)), 0.05, 1e-12);
  });

  it('is flattest behind the middle of a fairing, as its curvature by differences says', () => {
    const y = (x: number): number => halfThickness(0.25, x);
    let largest = 0;
    for (let x = 0.3; x < 0.99; x += 0.001) {
      const h = 1e-3;
      const [slope, bend] = [(y(x + h) - y(x - h)) / (2 * h), (y(x + h) - 2 * y(x) + y(x - h)) / (h * h)];
      largest = Math.max(largest, (1 + slope * slope) ** 1.5 / Math.abs(bend));
    }
    expectClose(flattestRadiusM(fairing(1, 0.25)), largest, 1e-3);
  });
});
