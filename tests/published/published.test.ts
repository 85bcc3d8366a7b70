import { describe, expect, it } from 'vitest';
import { crossFlowDoubt } from '../../src/physics/section/crossFlowDoubt';
import { moistStates } from './air';
import { publishedChecks } from './checks';
import { isAsStated, judgeCheck } from './judgeCheck';
import { netHalfWidths } from './net';
import {
  buckSaturationPa,
  chengDrag,
  cipmDensityKgM3,
  cipmSaturationPa,
  psychrolibDensityKgM3,
  psychrolibSaturationPa,
  suckerBrauerDrag,
  whiteDrag,
} from './oracles';
import { checkKinds, halfLastDigit, type PublishedCheck } from './publishedCheck';
import { roarkEllipse } from './strut';
import { noneFound } from './validationDocument';

const agreeing = publishedChecks.filter(({ knownDisagreement }) => knownDisagreement === undefined);
const disagreeing = publishedChecks.filter(({ knownDisagreement }) => knownDisagreement !== undefined);
const countOf = (kind: PublishedCheck['kind']): number =>
  agreeing.filter((check) => check.kind === kind).length;

describe.each(checkKinds)('%s: the model gives the published number', (kind) => {
  const ofKind = agreeing.filter((check) => check.kind === kind);
  it.each(ofKind.map((check) => [check.id, check] as const))('%s', (_, check) => {
    const verdict = judgeCheck(check);
    expect(verdict, `${check.what}: printed ${check.printedText}`).toMatchObject({ agrees: true });
  });
});

describe('known disagreements keep the size that was written down', () => {
  it.each(disagreeing.map((check) => [check.id, check] as const))('%s', (_, check) => {
    const verdict = judgeCheck(check);
    expect(isAsStated(check, verdict), `relative difference is now ${verdict.relative ?? NaN}`).toBe(true);
  });
});

describe('the registry', () => {
  it('holds at least 120 agreeing checks, 25 of them external and 30 measured', () => {
    expect(agreeing.length).toBeGreaterThanOrEqual(120);
    expect(countOf('external')).toBeGreaterThanOrEqual(25);
    expect(countOf('measurement')).toBeGreaterThanOrEqual(30);
    expect(countOf('transcription')).toBeGreaterThanOrEqual(50);
  });

  it('has a number from outside for every family, or says that none was found', () => {
    const withOutside = new Set(
      publishedChecks.filter(({ kind }) => kind !== 'transcription').map(({ topic }) => topic),
    );
    const without = new Set(publishedChecks.map(({ topic }) => topic).filter((one) => !withOutside.has(one)));
    expect([...without].sort()).toEqual(Object.keys(noneFound).sort());
  });

  it('carries the wide band it speaks of where none was found', () => {
    // By the nodes: (1.29 - 0.78) / (2 x 1.03) at solidity 0.1, (2.19 - 0.87) / (2 x 1.37) at 0.3.
    expect(netHalfWidths().low).toBeCloseTo(0.2476, 4);
    expect(netHalfWidths().high).toBeCloseTo(0.4818, 4);
    expect(noneFound['Nets and screens']).toContain('25 to 48 %');
    expect(crossFlowDoubt(Math.cos(Math.PI / 3))).toBeCloseTo(0.2, 12);
    expect(crossFlowDoubt(0)).toBeCloseTo(0.5, 12);
  });

  it('names every check once', () => {
    const ids = publishedChecks.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
  });

  it('names a source, a place in it and a reason for every tolerance and disagreement', () => {
    for (const check of publishedChecks) {
      const texts = [check.source.title, check.source.where, check.what, check.toleranceReason];
      expect(
        texts.every((text) => text.trim().length > 3),
        check.id,
      ).toBe(true);
      expect((check.knownDisagreement?.reason ?? 'none').length, check.id).toBeGreaterThan(3);
    }
  });

  it('carries the number that stands on the page', () => {
    for (const { id, printed, printedText } of publishedChecks) expect(Number(printedText), id).toBe(printed);
  });

  it('never hides behind a tolerance over 10 %, unless so few digits are printed, and no range is unbounded', () => {
    for (const check of publishedChecks) {
      const { limit, band } = judgeCheck(check);
      const largest = Math.max(0.1 * Math.abs(check.printed), halfLastDigit(check.printedText));
      expect(limit, check.id).toBeLessThanOrEqual(largest * (1 + 1e-12));
      if (band !== null) expect(band.high / band.low, check.id).toBeLessThan(6);
    }
  });
});

describe('judging', () => {
  const sample: PublishedCheck = {
    id: 'sample',
    topic: 'sample',
    kind: 'external',
    source: { title: 'sample', where: 'nowhere' },
    confidence: 'derived',
    what: 'a number',
    unit: '1',
    printed: 0.76,
    printedText: '0.76',
    tolerance: { absolute: 0.02 },
    toleranceReason: 'read by eye',
    compute: () => 0.74,
  };

  it('accepts a difference equal to the tolerance and refuses a larger one', () => {
    expect(judgeCheck(sample).agrees).toBe(true);
    expect(judgeCheck({ ...sample, compute: () => 0.7399 }).agrees).toBe(false);
  });

  it('refuses a value that is not a number', () => {
    expect(judgeCheck({ ...sample, compute: () => NaN }).agrees).toBe(false);
    expect(judgeCheck({ ...sample, compute: () => NaN, band: () => ({ low: 0, high: 1 }) }).agrees).toBe(
      false,
    );
  });

  it('asks a range to hold both the printed and the best value', () => {
    expect(judgeCheck({ ...sample, band: () => ({ low: 0.7, high: 0.75 }) }).agrees).toBe(true);
    expect(judgeCheck({ ...sample, band: () => ({ low: 0.7, high: 0.735 }) }).agrees).toBe(false);
    expect(judgeCheck({ ...sample, printed: 0.8, band: () => ({ low: 0.7, high: 0.75 }) }).agrees).toBe(
      false,
    );
  });

  it('notices a disagreement that has gone or has changed', () => {
    const stated: PublishedCheck = {
      ...sample,
      printed: 1,
      knownDisagreement: { reason: 'sample', relative: -0.26 },
    };
    expect(isAsStated(stated, judgeCheck(stated))).toBe(true);
    for (const computed of [1, 0.72, 0.78]) {
      const changed = { ...stated, compute: () => computed };
      expect(isAsStated(changed, judgeCheck(changed))).toBe(false);
    }
  });

  it('takes half a unit of the last printed digit', () => {
    expect(halfLastDigit('1.2250')).toBeCloseTo(5e-5, 15);
    expect(halfLastDigit('1.7894e-5')).toBeCloseTo(5e-10, 20);
    expect(halfLastDigit('240')).toBe(0.5);
    expect(halfLastDigit('7.73e4')).toBeCloseTo(50, 10);
  });
});

describe('numbers quoted from other formulas are what these formulas give', () => {
  const quoted = (id: string): PublishedCheck => {
    const found = publishedChecks.find((check) => check.id === id);
    if (found === undefined) throw new Error(`no check is called ${id}`);
    return found;
  };
  const expectQuoted = (id: string, value: number): void => {
    const { printed, printedText } = quoted(id);
    expect(Math.abs(value - printed), id).toBeLessThanOrEqual(1.001 * halfLastDigit(printedText));
  };

  it.each(moistStates)('moist air %s by CIPM-2007 and by psychrolib', (name, t, humidity, p) => {
    expectQuoted(`air-cipm-${name}`, cipmDensityKgM3(t, humidity, p));
    expectQuoted(`air-psychrolib-${name}`, psychrolibDensityKgM3(t, humidity, p));
  });

  it('saturation pressure at 20 C by CIPM-2007, Buck and psychrolib', () => {
    expectQuoted('air-saturation-cipm', cipmSaturationPa(20));
    expectQuoted('air-saturation-buck', buckSaturationPa(20));
    expectQuoted('air-saturation-psychrolib', psychrolibSaturationPa(20));
  });

  it('smooth cylinders by Cheng, by Sucker and Brauer, and by White', () => {
    for (const Re of [1, 3, 10, 30]) expectQuoted(`bar-cheng-low-${Re}`, chengDrag(Re));
    for (const Re of [1e2, 1e3, 2e3, 4e3, 1e4, 5e4, 1e5]) {
      expectQuoted(`bar-cheng-${Re}`, chengDrag(Re));
      expectQuoted(`bar-sucker-brauer-${Re}`, suckerBrauerDrag(Re));
    }
    expectQuoted('bar-sucker-brauer-1', suckerBrauerDrag(1));
    for (const Re of [1e2, 2e3, 1e4, 5e4]) expectQuoted(`bar-white-${Re}`, whiteDrag(Re));
  });

  it('hollow ellipses by Roark', () => {
    expectQuoted('strut-roark-area', roarkEllipse(0.049, 0.024, 0.002).areaM2 * 1e4);
    expectQuoted('strut-roark-strong', roarkEllipse(0.049, 0.024, 0.002).secondM4 * 1e8);
    expectQuoted('strut-roark-weak', roarkEllipse(0.024, 0.049, 0.002).secondM4 * 1e8);
  });

  it('Strouhal numbers of round bars by 0.198 (1 - 19.7/Re)', () => {
    for (const Re of ['300', '1e3', '1e4', '1e5']) {
      expectQuoted(`vibration-strouhal-${Re}`, 0.198 * (1 - 19.7 / Number(Re)));
    }
  });
});
