import { describe, expect, it } from 'vitest';
import { memberLengthsM } from '../../../src/project/bench/benchMember';
import { candidateMass } from '../../../src/project/bench/candidateMass';
import { startCandidate, type Candidate } from '../../../src/project/bench/candidates';
import { memberWind } from '../../../src/project/bench/memberWind';
import { strutOfCandidate } from '../../../src/project/bench/strutOfCandidate';
import { candidateThicknessCurve } from '../../../src/project/bench/thicknessCurveOf';
import { candidateTurning } from '../../../src/project/bench/turningOf';
import { candidateVibration } from '../../../src/project/bench/vibrationOf';
import { usualBench } from '../../../src/state/benchAddress';
import { demoPath, projectAt } from '../../properties/projects';
import { memberNamed } from './support';

const project = projectAt(demoPath);
const pole = memberNamed(project, 'Stern pole');
const conditionId = project.conditions[0]?.id ?? '';
const basis = { kind: 'profile' } as const;
const tube = { material: 'aluminium6082', wallM: 0.003 } as const;
const diameterM = 'diameter' in pole.fitting.shape ? pole.fitting.shape.diameter.m : NaN;
const [lengthM = NaN] = memberLengthsM(project, pole);
const parts = { id: 'x', name: 'X', massKg: null, cost: 0 } as const;
const nose = { kind: 'fixed', angleDeg: 0 } as const;
const roundSection: Candidate = {
  ...parts,
  kind: 'ellipse',
  chordM: diameterM,
  thicknessM: diameterM,
  direction: nose,
  mass: { kind: 'wall', ...tube },
};

describe('the strut of a candidate', () => {
  it('that is an ellipse of equal axes is the tube itself, wall and load', () => {
    const answer = strutOfCandidate(project, pole, roundSection, tube);
    if (!answer.ok) throw new Error(answer.message);
    expect(answer.needed?.wallM).toBeCloseTo(tube.wallM, 8);
    expect((answer.typed?.upperBoundN ?? NaN) / answer.tube.upperBoundN).toBeCloseTo(1, 9);
    // Pi^2 E I / L^2 of the ring.
    const inner = diameterM - 2 * tube.wallM;
    const ringM4 = (Math.PI / 64) * (diameterM ** 4 - inner ** 4);
    expect(answer.tube.eulerLoadN / ((Math.PI ** 2 * 70e9 * ringM4) / lengthM ** 2)).toBeCloseTo(1, 6);
  });

  it('says that a thin-walled slender section carries less, and what it needs; a fairing carries nothing', () => {
    const weak: Candidate = {
      ...roundSection,
      kind: 'section',
      thicknessM: diameterM / 3,
      mass: { kind: 'wall', material: 'aluminium6082', wallM: 0.001 },
    };
    const answer = strutOfCandidate(project, pole, weak, tube);
    expect(answer.ok && answer.verdict).toMatch(
      /less than the tube .*(it needs a wall of|even solid it carries less)/,
    );
    const fairing = strutOfCandidate(project, pole, startCandidate('fairingRound', pole, 'f'), tube);
    expect(fairing.ok && fairing.verdict).toContain('the fairing carries nothing');
    expect(fairing.ok && fairing.notices.join(' ')).toContain('upper bound');
  });
});

describe('the mass of a candidate', () => {
  it('from a wall is that of the ring, and changes the ledger by the difference', () => {
    const { massKg, changeKg } = candidateMass(project, pole, roundSection);
    const inner = diameterM - 2 * tube.wallM;
    const ringKg = 2700 * (Math.PI / 4) * (diameterM ** 2 - inner ** 2) * lengthM;
    expect((massKg ?? NaN) / ringKg).toBeCloseTo(1, 6);
    expect(changeKg).toBeCloseTo((massKg ?? NaN) - (pole.fitting.massKg ?? NaN), 12);
  });

  it('of a fairing is added, over every bar of a row or pair', () => {
    const rails = memberNamed(project, 'Stanchions');
    const { massKg, changeKg } = candidateMass(project, rails, startCandidate('fairingRound', rails, 'f'));
    expect(changeKg).toBe(massKg);
    expect(memberLengthsM(project, rails).length).toBeGreaterThan(1);
    expect(massKg).toBeGreaterThan(0);
  });
});

describe('the vibration of a candidate', () => {
  it('shows both holdings of the ends, clamped ends meeting at 22.3733 / pi^2 of the wind', () => {
    const answer = candidateVibration(project, pole, startCandidate('bare', pole, 'b'), tube, basis);
    if (!answer.ok) throw new Error(answer.message);
    const [pinned, clamped] = answer.cases;
    expect(answer.cases.map(({ label }) => label).slice(0, 2)).toEqual([
      'both ends pinned',
      'both ends clamped',
    ]);
    const ratio = (clamped?.trace.meetingSpeedMs ?? NaN) / (pinned?.trace.meetingSpeedMs ?? NaN);
    expect(ratio).toBeCloseTo(22.3733 / Math.PI ** 2, 9);
    const wind = memberWind(project, pole, basis);
    expect(typeof wind === 'string' ? wind : wind.crossToMs).toBe(pinned?.trace.speedToMs);
  });

  it('is refused in words for a faired or elliptical section, and takes a wire by its tension', () => {
    const faired = candidateVibration(project, pole, startCandidate('fairingRound', pole, 'f'), tube, basis);
    expect(faired).toMatchObject({ ok: false });
    expect(faired.ok ? '' : faired.message).toContain('not for elliptical or faired sections');
    const wire = candidateVibration(
      project,
      pole,
      startCandidate('bare', pole, 'b'),
      { tensionN: 1000, massPerLengthKgM: 0.1 },
      basis,
    );
    expect(wire.ok && wire.cases[0]?.trace.firstFrequencyHz).toBeCloseTo(100 / (2 * lengthM), 9);
  });
});

describe('a turning candidate', () => {
  const turning = startCandidate('fairingRound', pole, 'f');

  it('is a moving part, and is told when its tube does not fit the pivot', () => {
    const answer = candidateTurning(project, pole, turning, usualBench.turning, conditionId);
    if (!answer.ok) throw new Error(answer.message);
    expect(answer.notices.join(' ')).toContain('can jam');
    expect(answer.notices.join(' ')).toContain('does not fit at that pivot');
    const wide = { ...turning, clearanceM: 0.02 } as Candidate;
    const roomy = candidateTurning(project, pole, wide, usualBench.turning, conditionId);
    expect(roomy.ok && roomy.notices.join(' ')).not.toContain('does not fit');
  });

  it('does not follow with the pivot behind a quarter of its chord, and may flutter with its mass behind the pivot', () => {
    const answer = candidateTurning(
      project,
      pole,
      turning,
      { ...usualBench.turning, pivotShare: 0.3 },
      conditionId,
    );
    expect(answer.ok && answer.notices.join(' ')).toMatch(/does not follow the wind.*may flutter/);
  });

  it('is none when it is fixed or nobody gives its mass', () => {
    const fixed = { ...turning, direction: nose } as Candidate;
    expect(candidateTurning(project, pole, fixed, usualBench.turning, conditionId)).toMatchObject({
      ok: false,
    });
    const light = { ...turning, mass: { kind: 'none' } } as Candidate;
    const answer = candidateTurning(project, pole, light, usualBench.turning, conditionId);
    expect(answer.ok ? '' : answer.message).toContain('mass is needed');
  });
});

describe('the thickness curve of a candidate', () => {
  it('has a flat stretch in words and the present ratio, at the mean wind square to the member', () => {
    const answer = candidateThicknessCurve(project, pole, startCandidate('section', pole, 's'), conditionId);
    if (!answer.ok) throw new Error(answer.message);
    expect(answer.presentRatio).toBeCloseTo(0.25, 6);
    expect(answer.flat.from).toBeLessThan(answer.flat.to);
    expect(answer.flatText).toMatch(/^Within 5 % of the least drag at thickness over chord 0\.\d\d–0\.\d\d/);
    const fraction = answer.rows.map(({ chordM, thicknessRatio }) => chordM * thicknessRatio);
    expect(Math.max(...fraction) - Math.min(...fraction)).toBeLessThan(1e-12);
  });

  it('is refused for what is no fairing', () => {
    expect(candidateThicknessCurve(project, pole, roundSection, conditionId)).toMatchObject({ ok: false });
  });
});
