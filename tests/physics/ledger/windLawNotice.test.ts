import { describe, expect, it } from 'vitest';
import { doubtChange } from '../../../src/physics/doubt/doubtChange';
import { zeroChange } from '../../setup/zeroChange';
import { zeroOutcome } from '../../../src/physics/fitting/outcome';
import { resultOf } from '../../../src/physics/ledger/ledgerSums';
import { windLawNotice } from '../../../src/physics/ledger/windLawNotice';

function noticeOf(airPowerW: number, up: number, down: number, id = 'wind-law') {
  const change = (watts: number) => ({ ...zeroChange(), airPowerW: watts, trackPowerW: 7 });
  const doubts = [
    doubtChange('wind-speed', change(500), change(-500)),
    doubtChange(id, change(up), change(down)),
  ];
  return windLawNotice(resultOf({ ...zeroOutcome, airPowerW, trackPowerW: 3 }, () => doubts));
}

describe('the notice of the laws among the waves', () => {
  it('says how far the laws span over the air power, the chosen one among them', () => {
    expect(noticeOf(200, 10, 30)).toEqual({ code: 'deck-among-waves', values: { spanShare: 0.15 } });
    expect(noticeOf(200, -10, -30)?.values['spanShare']).toBeCloseTo(0.15, 12);
    expect(noticeOf(200, -10, 30)?.values['spanShare']).toBeCloseTo(0.2, 12);
    expect(noticeOf(-200, 10, -30)?.values['spanShare']).toBeCloseTo(0.2, 12);
  });

  it('is none without air that moves, or without the doubt', () => {
    expect(noticeOf(0, 10, 30)).toBeNull();
    expect(noticeOf(200, 10, 30, 'density')).toBeNull();
  });
});
