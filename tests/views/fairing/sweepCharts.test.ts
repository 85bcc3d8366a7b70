import { describe, expect, it } from 'vitest';
import type { Band, BenchSweep, Currency } from '../../../src/project/bench/benchTypes';
import type { Candidate } from '../../../src/project/bench/candidates';
import { benchOf, benchWordsOf, usualBench, usualTyped, type Bench } from '../../../src/state/benchAddress';
import { toSi } from '../../../src/units/convert';
import { looksOf, roundStep, sweepChartInput, tablePlaces } from '../../../src/views/fairing/sweepCharts';

function bareNamed(id: string): Candidate {
  return { kind: 'bare', id, name: id, massKg: null, cost: 0 };
}

function thinner(id: string): Candidate {
  return {
    kind: 'thinnerRound',
    id,
    name: id,
    massKg: null,
    cost: 0,
    diameterM: 0.03,
    mass: { kind: 'none' },
  };
}

/** 181 angles; each value is the angle's number times a factor. */
function sweepOf(factor: number, presentAt: number | null): BenchSweep {
  const xs = Float64Array.from({ length: 181 }, (_, deg) => toSi(deg, 'deg'));
  const best = Float64Array.from({ length: 181 }, (_, deg) => factor * deg);
  const band: Band = { best, low: best, high: best };
  const bands: Record<Currency, Band> = {
    dragAlongWindN: band,
    trackPowerW: band,
    sideForceN: band,
    fullPriceW: band,
  };
  return {
    question: { conditionId: 'c', over: 'apparentAngle', tack: 'port' },
    xs,
    presentAt,
    held: () => '',
    bands,
    doubts: [],
  };
}

const swept = (at: number, presentAt: number | null = null) => [
  { candidate: bareNamed('bare'), sweep: sweepOf(2, presentAt), crossings: [] },
  {
    candidate: thinner('thin'),
    sweep: sweepOf(1, presentAt),
    crossings: [
      {
        currency: 'trackPowerW' as const,
        text: '',
        crossings: [{ at, from: at - 0.1, to: at + 0.1, winsBelow: true, text: '' }],
      },
    ],
  },
];

const options = { chosenId: 'thin', currency: 'trackPowerW', widthPx: 400, heightPx: 200 } as const;

describe('the charts of a sweep', () => {
  it('gives the bare member and the chosen candidate a look of their own, every other one a dash', () => {
    const looks = looksOf([bareNamed('a'), thinner('b'), thinner('c'), thinner('d')], 'c');
    expect([...looks.values()]).toEqual([
      { look: 'bare', dashIndex: 0 },
      { look: 'other', dashIndex: 0 },
      { look: 'chosen', dashIndex: 0 },
      { look: 'other', dashIndex: 1 },
    ]);
  });

  it("rings a crossing on the candidate's own line, between the places of the sweep", () => {
    const input = sweepChartInput({ swept: swept(toSi(17.3, 'deg')), ...options });
    expect(input?.rings).toHaveLength(1);
    expect(input?.rings[0]?.y).toBeCloseTo(17.3, 9);
    expect(input?.rings[0]?.label).toBe('17.3°');
  });

  it('rings nothing in a currency that has no crossing', () => {
    const input = sweepChartInput({ swept: swept(0.3), ...options, currency: 'sideForceN' });
    expect(input?.rings).toEqual([]);
  });

  it('marks the present on its own tack, and nothing on the other', () => {
    const now = sweepChartInput({ swept: swept(0.3, toSi(30.9, 'deg')), ...options })?.now;
    expect(now).toEqual({ x: toSi(30.9, 'deg'), label: 'now 30.9°' });
    expect(sweepChartInput({ swept: swept(0.3, null), ...options })?.now).toBeNull();
  });

  it('is logarithmic for drag along the wind alone', () => {
    const scale = (currency: Currency) =>
      sweepChartInput({ swept: swept(0.3), ...options, currency })?.isLogarithmic;
    expect(scale('dragAlongWindN')).toBe(true);
    expect(scale('trackPowerW')).toBe(false);
    expect(scale('sideForceN')).toBe(false);
  });

  it('puts every tenth degree into the table', () => {
    expect(tablePlaces(sweepOf(1, null))).toEqual(Array.from({ length: 19 }, (_, i) => 10 * i));
  });

  it.each([
    [0.3, 0.5],
    [1, 1],
    [1.2, 2],
    [7, 10],
    [30, 50],
  ])('steps an axis by one, two or five: at least %d is %d', (least, step) => {
    expect(roundStep(least)).toBeCloseTo(step, 12);
  });
});

describe('the address of the bench', () => {
  const full: Bench = {
    ...usualBench,
    typed: { ...usualTyped, diameterM: 0.061, ends: ['joined', 'free'] },
    candidates: [bareNamed('bare'), thinner('thin')],
    chosenId: 'thin',
    currency: 'fullPriceW',
    isOtherTack: true,
    tube: { material: 'carbonEpoxy', wallM: 0.0031 },
    wire: { tensionN: 12_000, massPerLengthKgM: 0.4 },
    turning: { pivotShare: 0.18, massCentreShare: 0.3, endClearanceM: 0.004 },
  };

  it('brings back everything that stood on the bench', () => {
    expect(benchOf(benchWordsOf(full))).toEqual(full);
  });

  it('leaves out what is usual', () => {
    expect(benchWordsOf({ ...usualBench, memberId: 'pole' })).toBe('member=pole');
  });

  it.each([
    '',
    'tube=gold_3&turning=2_0.1_1&wire=-1_x',
    'tube=carbonEpoxy_9&in=money&see=<b>',
    'turning=__&tube=_&wire=1e99_1',
  ])('takes what is usual where it cannot read: %s', (words) => {
    expect(benchOf(words)).toEqual(usualBench);
  });
});
