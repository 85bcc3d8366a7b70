import { describe, expect, it } from 'vitest';
import { curveChartGeometry } from '../../../src/charts/curves/curveChartGeometry';
import { curveSvg } from '../../../src/charts/curves/curveSvg';
import type {
  ChartMark,
  CurveChartInput,
  CurveInput,
  MarkRole,
} from '../../../src/charts/curves/curveChartTypes';

/** 0 to 2 on x over 200 px, from 44 to 244. */
const xs = [0, 1, 2];

function curve(id: string, look: CurveInput['look'], best: readonly number[]): CurveInput {
  return { id, name: id, look, dashIndex: 0, best, low: best, high: best };
}

const bare = curve('bare', 'bare', [50, 50, 50]);
const chosen = curve('sleeve', 'chosen', [0, 50, 100]);

function inputOf(change: Partial<CurveChartInput> = {}): CurveChartInput {
  return {
    xs,
    xAxis: { from: 0, to: 2, ticks: [{ at: 1, label: '1' }], name: 'x' },
    unit: 'N',
    isLogarithmic: false,
    curves: [bare, chosen],
    rings: [],
    stretches: [],
    now: null,
    widthPx: 254,
    // 100 N over 200 px, from 218 up to 18.
    heightPx: 252,
    ...change,
  };
}

function marks(input: CurveChartInput, role: MarkRole): readonly ChartMark[] {
  return curveChartGeometry(input).marks.filter((mark) => mark.role === role);
}

function paths(input: CurveChartInput, role: MarkRole): readonly string[] {
  return marks(input, role).map((mark) => (mark.kind === 'path' ? mark.d : ''));
}

function texts(input: CurveChartInput, role: MarkRole): readonly string[] {
  return marks(input, role).map((mark) => (mark.kind === 'text' ? mark.text : ''));
}

describe('a chart of curves', () => {
  it('draws each line at its values, to the pixel', () => {
    expect(paths(inputOf(), 'bare')).toEqual(['M44,118L144,118L244,118']);
    expect(paths(inputOf(), 'chosen')).toEqual(['M44,218L144,118L244,18']);
  });

  it('fills what the chosen one saves below the bare one, and what it costs above', () => {
    expect(paths(inputOf(), 'saves')).toEqual(['M44,218L144,118L244,118L244,118L144,118L44,118Z']);
    expect(paths(inputOf(), 'costs')).toEqual(['M44,118L144,118L244,18L244,118L144,118L44,118Z']);
  });

  it('has zero on a linear axis, and negative values below it', () => {
    const ticks = texts(inputOf({ curves: [curve('push', 'chosen', [-50, 0, 50])] }), 'tick');
    expect(ticks).toEqual(['−60', '−40', '−20', '0', '20', '40', '60', '1']);
    expect(texts(inputOf(), 'tick')).toEqual(['0', '20', '40', '60', '80', '100', '1']);
  });

  it('steps by one, two and five on a logarithmic axis, equally far for equal factors', () => {
    const input = inputOf({ isLogarithmic: true, curves: [curve('sleeve', 'chosen', [2.5, 10, 100])] });
    expect(texts(input, 'tick')).toEqual(['2', '5', '10', '20', '50', '100', '1']);
    const ticks = marks(input, 'tick').map((mark) => (mark.kind === 'text' ? mark.y : 0));
    expect((ticks[0] ?? 0) - (ticks[2] ?? 0)).toBeCloseTo((ticks[3] ?? 0) - (ticks[5] ?? 0), 0);
  });

  it('rings a crossing with the range of its place, and puts its words beside it', () => {
    const input = inputOf({ rings: [{ x: 1, y: 50, lowX: 0.8, highX: 1.3, label: '17.2°' }] });
    expect(marks(input, 'ring')).toEqual([{ kind: 'ring', role: 'ring', x: 144, y: 118 }]);
    expect(paths(input, 'spread')).toEqual(['M124 114V122M124 118H174M174 114V122']);
    expect(texts(input, 'label')).toEqual(['17.2°']);
  });

  it('marks the present by one upright line, and none where there is no present', () => {
    expect(paths(inputOf({ now: { x: 0.5, label: 'now' } }), 'now')).toEqual(['M94 6V218']);
    expect(paths(inputOf(), 'now')).toEqual([]);
  });

  it('names every line on the line, no two names over each other', () => {
    const others = [10, 30, 70, 90].map((value) => curve(`other ${value}`, 'other', [value, value, value]));
    const input = inputOf({ widthPx: 500, curves: [bare, chosen, ...others] });
    const labels = ['bareLabel', 'chosenLabel', 'label'].flatMap((role) => [
      ...marks(input, role as MarkRole),
    ]);
    expect(labels).toHaveLength(6);
    const boxes = labels.map((mark) =>
      mark.kind === 'text' ? [mark.x, mark.y, mark.text.length * 6.2] : [],
    );
    boxes.forEach(([x = 0, y = 0, width = 0], i) => {
      boxes.slice(i + 1).forEach(([otherX = 0, otherY = 0, otherWidth = 0]) => {
        const isApart = Math.abs(y - otherY) >= 14 || Math.abs(x - otherX) >= (width + otherWidth) / 2;
        expect(isApart).toBe(true);
      });
    });
  });

  it('leaves a gap where a line has no value', () => {
    const broken = curve('sleeve', 'chosen', [0, Number.NaN, 100]);
    expect(paths(inputOf({ curves: [bare, broken] }), 'chosen')).toEqual(['M44,218ZM244,18Z']);
  });
});

describe('a chart as a file', () => {
  it('carries title and date, escapes what was typed, and has no script and no address', () => {
    const named = { ...chosen, name: '<script>alert("1")</script> & co' };
    const svg = curveSvg(
      curveChartGeometry(inputOf({ curves: [bare, named] })),
      ['Track power', 'Pole <b>', '3 May 2026'],
      [],
    );
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
    expect(parsed.querySelector('parsererror')).toBeNull();
    expect(parsed.querySelector('title')?.textContent).toBe('Track power. Pole <b>. 3 May 2026');
    expect(parsed.querySelectorAll('script, style, image, a')).toHaveLength(0);
    expect(Array.from(parsed.querySelectorAll('text'), (text) => text.textContent)).toContain(named.name);
    expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/href|url\(|http/);
  });
});
