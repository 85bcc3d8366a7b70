import { describe, expect, it } from 'vitest';
import type { FittingInput, Shape } from '../../src/physics/fitting/fittingInput';
import type { FittingTrace } from '../../src/physics/fitting/evaluateFitting';
import { crossings } from '../../src/physics/numerics/crossings';
import { emptyFairing, fairingCoefficients } from '../../src/physics/section/fairing';
import { boatVector } from '../../src/physics/vector/vector3';
import { curveAt } from '../published/roundBarCurves';
import { conditionOf, evaluate, fittingOf, fluid, windMetAs } from '../published/support';
import { degree } from './arbitraries';

/** A tube of 60 mm, or a fairing as thick, 2 m upright with closed ends: 12 m/s of apparent wind, 6 m/s through the water. */
const thicknessM = 0.06;
const lengthM = 2;
const apparentMs = 12;
const boatMs = 6;
const air = fluid(1.225, 1.5e-5);

function uprightBar(shape: Shape): FittingInput {
  return fittingOf(shape, [{ start: boatVector(0, 0, 2), end: boatVector(0, 0, 2 + lengthM) }], 'bar');
}

const parts = {
  coefficient: null,
  coefficientDoubtId: 'own:bar:coefficient',
  friction: false,
  ends: ['joined', 'joined'],
} as const;

const tube = uprightBar({
  ...parts,
  kind: 'roundBar',
  diameter: { valueM: thicknessM, basis: 'measured', doubtId: 'own:bar:diameter' },
  roughnessM: 0,
});

/** The nose turned from forward towards the wind, which comes from starboard. */
function fairing(thicknessRatio: number, chordDeg: number): FittingInput {
  return uprightBar({
    ...parts,
    kind: 'fairing',
    chord: { valueM: thicknessM / thicknessRatio, basis: 'measured', doubtId: 'own:bar:chord' },
    thickness: { valueM: thicknessM, basis: 'measured', doubtId: 'own:bar:thickness' },
    cornerRadiusM: 0,
    direction: { kind: 'fixed', angleRad: -chordDeg * degree },
    directionDoubtId: 'own:bar:direction',
  });
}

const quantities = {
  'drag along the wind': ({ mean }: FittingTrace) => mean.airPowerW / apparentMs,
  'track power': ({ mean }: FittingTrace) => mean.trackPowerW,
  'side force': ({ mean }: FittingTrace) => mean.sideForceN,
} as const;
type QuantityName = keyof typeof quantities;

/** The first route: the whole core, the fairing less the tube, at an apparent wind angle in degrees from the bow. */
function byTheCore(name: QuantityName, thicknessRatio: number, chordDeg: number): (deg: number) => number {
  const faired = fairing(thicknessRatio, chordDeg);
  return (deg) => {
    const condition = conditionOf({ boatSpeedMs: boatMs, wind: windMetAs(apparentMs, deg, boatMs) });
    const of = quantities[name];
    return of(evaluate(faired, condition, air)) - of(evaluate(tube, condition, air));
  };
}

/** The second route: coefficients of the sections and the trigonometry of an upright bar in the horizontal plane. */
function byHand(name: QuantityName, thicknessRatio: number, chordDeg: number): (deg: number) => number {
  const chordM = thicknessM / thicknessRatio;
  const pressure = 0.5 * air.densityKgM3 * apparentMs ** 2 * lengthM;
  const tubeDrag = pressure * thicknessM * curveAt((apparentMs * thicknessM) / 1.5e-5).best;
  const of = (deg: number, drag: number, lift: number): number => {
    const [sine, cosine] = [Math.sin(deg * degree), Math.cos(deg * degree)];
    if (name === 'drag along the wind') return drag;
    return name === 'track power' ? boatMs * (drag * cosine - lift * sine) : drag * sine + lift * cosine;
  };
  return (deg) => {
    const { drag, lift } = fairingCoefficients(
      thicknessRatio,
      (apparentMs * chordM) / 1.5e-5,
      (deg - chordDeg) * degree,
      'turbulent',
      emptyFairing(),
    );
    const perCoefficient = pressure * chordM;
    return of(deg, perCoefficient * drag, perCoefficient * lift) - of(deg, tubeDrag, 0);
  };
}

/** From ahead and from astern a section along the centreline has no side force at all: nothing changes places there. */
const fromDeg = 0.1;
const toDeg = 179.9;

/** The middles of the cells of 0.2 deg over which the sign changes, by brute force. */
function scanned(curve: (deg: number) => number): number[] {
  const found: number[] = [];
  let before = curve(fromDeg);
  for (let cell = 1; cell <= 899; cell += 1) {
    const deg = fromDeg + cell / 5;
    const here = curve(deg);
    if (before * here < 0) found.push(deg - 0.1);
    if (here !== 0) before = here;
  }
  return found;
}

const cases = [0.18, 0.25].flatMap((thicknessRatio) =>
  [0, 10, 20].flatMap((chordDeg) =>
    (Object.keys(quantities) as QuantityName[]).map((name) => ({ thicknessRatio, chordDeg, name })),
  ),
);

describe('where a fairing overtakes a bare tube, over the apparent wind angle', () => {
  it.each(cases)(
    't/c $thicknessRatio, chord at $chordDeg deg, $name: root finder and scan of 0.2 deg agree',
    ({ name, thicknessRatio, chordDeg }) => {
      const solved = crossings(byTheCore(name, thicknessRatio, chordDeg), fromDeg, toDeg, 1, 1e-6);
      const expected = scanned(byHand(name, thicknessRatio, chordDeg));
      expect(solved.map((deg) => deg.toFixed(1))).toHaveLength(expected.length);
      solved.forEach((deg, i) => {
        expect(Math.abs(deg - (expected[i] ?? NaN))).toBeLessThanOrEqual(0.2);
      });
    },
  );

  it('happens in the drag along the wind at every chord, and never where the wind comes along the chord', () => {
    for (const { name, thicknessRatio, chordDeg } of cases) {
      if (name !== 'drag along the wind') continue;
      const difference = byHand(name, thicknessRatio, chordDeg);
      expect(scanned(difference).length).toBeGreaterThan(0);
      expect(difference(chordDeg)).toBeLessThan(0);
      expect(difference(chordDeg + 90)).toBeGreaterThan(0);
    }
  });
});
