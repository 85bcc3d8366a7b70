import { describe, expect, it } from 'vitest';
import type { EnvelopeTexts } from '../../../src/project/envelope/envelopeTexts';
import { typedExamples } from '../../published/envelopeTyped';
import { checkOf, checkOfScribble, computed, slipIds, stepOf } from './support';

const knotMs = 1852 / 3600;

/** Posts in a breeze with right answers: 0.28 m2, q 86.4 Pa, 14.515 N, 174.18 W. */
const posts: EnvelopeTexts = {
  density: '1.2 kg/m3',
  speed: '12 m/s',
  shape: 'roundBar',
  count: '16',
  width: '25 mm',
  length: '0.7 m',
  coefficient: '0.6',
};

describe('the numbers that the trade carries about, typed in as a student would', () => {
  it('follow from each other: 24 N and 240 W', () => {
    const check = checkOfScribble('Air 1.2 kg/m3, 10 m/s, Cd 0.5, 0.8 m2: 24 N and 240 W');
    expect(computed(check, 'force')).toBeCloseTo(24, 10);
    expect(computed(check, 'power')).toBeCloseTo(240, 10);
    expect([check.mismatches, check.slips]).toEqual([[], []]);
    expect(stepOf(check, 'force').formula).toBe('F = q · CdA = 60.0\u00a0Pa × 0.400\u00a0m² = 24.0\u00a0N');
  });

  it('give 180 W for 0.6 m2, and 0.563 mechanical horsepower for 420 W', () => {
    const smaller = checkOfScribble('1.2 kg/m3, 10 m/s, Cd 0.5, 0.6 m2, 180 W');
    expect(computed(smaller, 'power')).toBeCloseTo(180, 10);
    const both = checkOfScribble('1.2 kg/m3, 10 m/s, Cd 0.5, 1.4 m2, 420 W, 0.563 hp');
    expect(computed(both, 'horsepower') / 745.69987158).toBeCloseTo(0.563, 3);
    expect([smaller.mismatches, both.mismatches]).toEqual([[], []]);
  });

  it('catch Cd 0.5 for a tube of 100 mm by 3 m at 10 m/s: low by about two', () => {
    const { handbook } = checkOfScribble('pole 100 mm 3 m, free ends, 10 m/s, 20 °C, Cd 0.5');
    expect(handbook?.reynolds).toBeCloseTo(6.6e4, -3);
    expect(handbook?.sectionCoefficient.best).toBeCloseTo(1.2, 2);
    expect(Math.abs((handbook?.coefficient.best ?? 0) - 0.95)).toBeLessThan(0.02);
    expect(handbook?.verdict?.kind).toBe('low');
    expect(handbook?.verdict?.sentence).toContain('Cd 0.50 is low by about two');
    expect(handbook?.sentences.join(' ')).toContain('a tube’s beyond the drag crisis');
  });
});

describe('textbook examples, typed with their answers', () => {
  it.each(Object.entries(typedExamples))('%s raises nothing', (_, text) => {
    const { mismatches, slips } = checkOfScribble(text);
    expect([mismatches, slips]).toEqual([[], []]);
  });
});

/** Right numbers, each with one thing done wrong in the answer. */
const plantedSlips: readonly (readonly [string, EnvelopeTexts])[] = [
  ['knotsForMs', { ...posts, speed: '12 kn', force: '14.5 N', power: '174 W' }],
  ['knotsForMs', { ...posts, force: '3.84 N' }],
  ['knotsForMs', { ...posts, speed: '12 kn', force: '3.84 N', power: '46.1 W' }],
  ['kmhForMs', { ...posts, speed: '43.2 km/h', force: '188 N' }],
  ['radiusForDiameter', { ...posts, force: '7.26 N' }],
  ['diameterForRadius', { ...posts, area: '0.56 m2' }],
  ['otherHorsepower', { ...posts, power: '174 W', horsepower: '0.2368 hp' }],
  ['otherHorsepower', { ...posts, horsepower: '0.2336 PS' }],
  ['wettedArea', { ...posts, area: '0.88 m2', force: '45.6 N' }],
  [
    'wettedArea',
    { density: '1.2', speed: '10 m/s', shape: 'sphere', width: '0.3 m', coefficient: '0.5', force: '8.48 N' },
  ],
  [
    'diameterForRadius',
    { density: '1.2', speed: '10 m/s', shape: 'disc', width: '0.3 m', coefficient: '1.1', force: '18.7 N' },
  ],
  [
    'radiusForDiameter',
    { density: '1.2', speed: '10 m/s', shape: 'disc', width: '0.3 m', coefficient: '1.1', force: '1.17 N' },
  ],
  ['chordArea', { ...posts, shape: 'rectangularBar', depth: '60 mm', force: '34.8 N' }],
  ['countForgotten', { ...posts, force: '0.907 N' }],
  ['countForgotten', { ...posts, area: '0.0175 m2', areaOf: 'each', force: '0.907 N' }],
  ['halfForgotten', { ...posts, force: '29.0 N', power: '348 W' }],
  ['millimetresAsCentimetres', { ...posts, force: '145 N' }],
  ['millimetresAsCentimetres', { ...posts, width: '2.5 cm', area: '0.028 m2' }],
  ['trueForApparent', { ...posts, windKind: 'true', windAngle: '60°', boatSpeed: '8 m/s', force: '14.5 N' }],
  ['airForTrack', { ...posts, windAngle: '35°', boatSpeed: '4 m/s', powerKind: 'track', power: '174 W' }],
  ['trackForAir', { ...posts, windAngle: '35°', boatSpeed: '4 m/s', powerKind: 'air', power: '47.6 W' }],
];

describe('a slip in otherwise right numbers', () => {
  it.each(plantedSlips)('%s is named in %j', (id, texts) => {
    const check = checkOf(texts);
    expect(check.mismatches.length).toBeGreaterThan(0);
    expect(slipIds(check)).toContain(id);
    expect(check.slips.length).toBeLessThanOrEqual(3);
  });

  it('says of a power of nothing that it does not follow, and no factor or sign', () => {
    const { mismatches } = checkOf({ ...posts, force: '14.5 N', power: '0 W' });
    expect(mismatches.map(({ sentence }) => sentence)).toEqual([
      '0\u00a0W does not follow: 14.5\u00a0N × 12.0\u00a0m/s is 174\u00a0W.',
    ]);
  });

  it('is not named when the numbers do not fit it: then it is said that they do not follow, and no more', () => {
    const { mismatches, slips, slipLead, summary } = checkOf({ ...posts, force: '14.5 N', power: '190 W' });
    expect(mismatches.map(({ fieldId, fromFieldIds }) => [fieldId, fromFieldIds])).toEqual([
      ['power', ['force', 'speed']],
    ]);
    expect(mismatches[0]?.sentence).toBe(
      '190\u00a0W does not follow: 14.5\u00a0N × 12.0\u00a0m/s is 174\u00a0W. It is high by 9 %.',
    );
    expect([slips, slipLead]).toEqual([[], null]);
    expect(summary).toContain('No usual slip explains it.');
  });

  it('is one of several where the numbers do not tell: the diameter for the radius, or the half forgotten', () => {
    const check = checkOf({ ...posts, force: '29.0 N' });
    expect(slipIds(check)).toEqual(['diameterForRadius', 'halfForgotten']);
    expect(check.slipLead).toContain('One of these');
  });

  it('is not named beside one that explains more: a chord that happens to give the force, and not the power', () => {
    const bar = { ...posts, shape: 'rectangularBar', depth: '94.47 mm', speed: '12 kn', force: '14.5 N' };
    expect(slipIds(checkOf(bar))).toEqual(['knotsForMs', 'chordArea']);
    const check = checkOf({ ...bar, power: '174 W' });
    expect(slipIds(check)).toEqual(['knotsForMs']);
    expect(check.slips[0]?.explains).toEqual(['force', 'power']);
  });

  it('in one number leaves what follows from that number alone', () => {
    const check = checkOf({ ...posts, force: '29.0 N', power: '348 W' });
    expect(check.mismatches.map(({ fieldId }) => fieldId)).toEqual(['force']);
    expect(stepOf(check, 'power').agrees).toBe(true);
  });
});

describe('what is missing is worked out from the claims', () => {
  it('the coefficient from the force, and from the power', () => {
    const rest = { ...posts, coefficient: '' };
    expect(computed(checkOf({ ...rest, force: '14.5152 N' }), 'coefficient')).toBeCloseTo(0.6, 10);
    expect(computed(checkOf({ ...rest, power: '174.1824 W' }), 'coefficient')).toBeCloseTo(0.6, 10);
  });

  it('the area from force and coefficient', () => {
    const check = checkOf({ density: '1.2', speed: '12 m/s', coefficient: '0.6', force: '14.5152 N' });
    expect(computed(check, 'area')).toBeCloseTo(0.28, 10);
  });

  it('the speed from power and force, from the force, and from the power', () => {
    const rest = { ...posts, speed: '' };
    expect(
      computed(checkOf({ ...rest, force: '14.5152 N', power: '174.1824 W' }), 'apparentSpeed'),
    ).toBeCloseTo(12, 10);
    expect(computed(checkOf({ ...rest, force: '14.5152 N' }), 'apparentSpeed')).toBeCloseTo(12, 10);
    expect(computed(checkOf({ ...rest, power: '174.1824 W' }), 'apparentSpeed')).toBeCloseTo(12, 10);
  });

  it('and a claim that it was worked from is not said to agree', () => {
    const rest = { ...posts, speed: '' };
    expect(checkOf({ ...rest, force: '14.5152 N' }).steps.every(({ agrees }) => agrees === null)).toBe(true);
  });
});

describe('nothing is guessed silently', () => {
  const said = (texts: EnvelopeTexts): string => checkOf(texts).assumptions.join(' ');

  it('the air, the kind of wind, the ends, the kind of power and the horsepower are said', () => {
    const text = said({
      speed: '12 m/s',
      shape: 'roundBar',
      width: '25 mm',
      length: '0.7 m',
      horsepower: '0.1 hp',
    });
    for (const part of [
      '1.225',
      'taken as the wind that is met',
      'both are taken as free',
      'air power is taken',
      '745.7 W',
    ])
      expect(text).toContain(part);
  });

  it('and are not said again where they are written', () => {
    const text = said({ ...posts, ends: 'free', windKind: 'apparent', power: '174 W', powerKind: 'air' });
    for (const part of ['1.225', 'is not said', 'horsepower']) expect(text.toLowerCase()).not.toContain(part);
  });

  it('a true wind without angle and boat speed is taken as met, and said to be', () => {
    expect(said({ ...posts, windKind: 'true' })).toContain('The boat meets another one.');
  });

  it('an area is of one or of all, as the sizes say', () => {
    expect(said({ ...posts, area: '0.0175 m2' })).toContain('that of one');
    expect(said({ ...posts, area: '0.28 m2' })).toContain('all of them together');
    // 1 m2 is 0.5 to 1.5: one of 0.75 and two of 1.5 both round to it, and all of them goes first.
    const two = { ...posts, count: '2', width: '0.5 m', length: '1.5 m', area: '1 m2' };
    expect(said(two)).toContain('all of them together');
    expect(said({ speed: '12 m/s', count: '16', area: '0.0175 m2', coefficient: '0.6' })).toContain(
      'is not said',
    );
  });

  it('numbers without a unit are listed', () => {
    expect(said({ ...posts, density: '1.2', force: '14.5' })).toContain('density (kg/m³), force (N)');
  });
});

describe('the wind that is met', () => {
  it('follows from true wind, angle and boat speed', () => {
    const check = checkOf({
      ...posts,
      windKind: 'true',
      speed: '20 kn',
      windAngle: '60°',
      boatSpeed: '8 kn',
    });
    const [ahead, abeam] = [20 * 0.5 + 8, 20 * Math.sqrt(0.75)];
    expect(computed(check, 'apparentSpeed')).toBeCloseTo(Math.hypot(ahead, abeam) * knotMs, 10);
    expect(check.track?.apparentAngleRad).toBeCloseTo(Math.atan2(abeam, ahead), 10);
  });

  it('keeps its speed when it is said to be apparent', () => {
    const { track } = checkOf({ ...posts, windKind: 'apparent', windAngle: '35°', boatSpeed: '8 kn' });
    expect(track?.apparentSpeedMs).toBe(12);
    expect(track?.apparentAngleRad).toBeCloseTo((35 * Math.PI) / 180, 12);
  });

  it('is refused in words when the three do not close to a triangle', () => {
    const check = checkOf({ ...posts, windAngle: '90°', windAngleKind: 'true', boatSpeed: '20 m/s' });
    expect(check.track).toBeNull();
    expect(check.trackMissing).toContain('do not close to a triangle');
  });
});

describe('air power and track power', () => {
  it('differ by cos b and boat speed over wind speed, with the same spread', () => {
    const { track, handbook } = checkOf({ ...posts, windAngle: '35°', boatSpeed: '4 m/s' });
    const share = (Math.cos((35 * Math.PI) / 180) * 4) / 12;
    for (const key of ['best', 'low', 'high'] as const) {
      expect(track?.airPowerW[key]).toBeCloseTo((handbook?.forceN[key] ?? NaN) * 12, 10);
      expect(track?.trackPowerW[key]).toBeCloseTo((handbook?.airPowerW[key] ?? NaN) * share, 10);
    }
  });

  it('are negative for the boat when the wind comes from abaft the beam, low below high', () => {
    const { track } = checkOf({ ...posts, windAngle: '140°', boatSpeed: '4 m/s' });
    expect(track?.trackPowerW.best).toBeLessThan(0);
    expect(track?.trackPowerW.low).toBeLessThan(track?.trackPowerW.best ?? NaN);
    expect(track?.sentences.join(' ')).toMatch(/The wind pushes here: .* negative, 25\.5 % of/);
  });
});

describe('the table over speeds', () => {
  it('holds five, the one as written among them, in its unit', () => {
    const { speedTable } = checkOf({ ...posts, speed: '20 kn' });
    expect(speedTable?.speedUnit).toBe('kn');
    expect(speedTable?.rows.map(({ speedMs }) => Math.round(speedMs / knotMs))).toEqual([10, 15, 20, 25, 30]);
    expect(speedTable?.rows.map(({ isGiven }) => isGiven)).toEqual([false, false, true, false, false]);
  });

  it('goes with the square and the cube of the speed for the envelope’s own coefficient', () => {
    const rows = checkOf(posts).speedTable?.rows ?? [];
    expect((rows[4]?.envelopeForceN ?? 0) / (rows[0]?.envelopeForceN ?? 1)).toBeCloseTo(9, 10);
    expect((rows[4]?.envelopeAirPowerW ?? 0) / (rows[0]?.envelopeAirPowerW ?? 1)).toBeCloseTo(27, 10);
  });

  it.each([
    ['0.571 hp', true],
    ['0.563 hp', false],
    ['0.57 hp', true],
    ['0.56 hp', false],
  ])('tells that 420 W and %s go together in metric horsepower: %s', (horsepower, isMetric) => {
    const { assumptions } = checkOf({ power: '420 W', horsepower });
    expect(assumptions.some((each) => each.includes('in metric ones'))).toBe(isMetric);
  });
});
