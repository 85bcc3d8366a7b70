import { describe, expect, it } from 'vitest';
import {
  blankFitting,
  blankItem,
  between,
  noFlags,
  point,
  roundBar,
} from '../../../src/project/file/blankParts';
import type { ItemAccount } from '../../../src/project/ledger/ledgerTypes';
import { cautions } from '../../../src/project/wording/cautions';
import { doubtLabel } from '../../../src/project/wording/doubtLabel';
import { classRuleText, itemReasons } from '../../../src/project/wording/itemText';
import { noticeText } from '../../../src/project/wording/noticeText';

const rail = blankFitting({
  id: 'rail',
  name: 'Pulpit',
  zoneId: 'bow',
  shape: roundBar(0.03),
  placement: between(point(5, 0, 1), point(5, 0, 2)),
  flags: { ...noFlags, safetyRequired: true },
});

const item = blankItem({ id: 'i', name: 'No pulpit', fittingId: 'rail', change: { kind: 'removed' } });

function reasons(parts: Partial<ItemAccount>): string[] {
  return itemReasons({
    item,
    fitting: rail,
    status: 'counted',
    contradiction: null,
    savingInOrder: null,
    savingAlone: null,
    totalBefore: null,
    totalAfter: null,
    ...parts,
  });
}

describe('doubts by name', () => {
  it.each([
    ['wind-law', 'wind law'],
    ['coefficient:roundBar:crisis', 'coefficient, round bar, crisis'],
    ['own:rail:diameter', 'diameter, Pulpit'],
    ['own:gone:diameter', 'diameter'],
    ['own:plan/item:drag-area', 'drag area after the refit item'],
  ])('%s is called %s', (id, label) => {
    expect(doubtLabel(id, [rail])).toBe(label);
  });
});

describe('notices in words', () => {
  it('print their values with units', () => {
    expect(noticeText({ code: 'wind-near-axis', values: { angleRad: Math.PI / 6 } })).toContain(
      '30.0° off the axis',
    );
    expect(noticeText({ code: 'deck-among-waves', values: { spanShare: 0.115 } })).toContain(
      'differ by 11.5 %',
    );
  });

  it('tell one member under water from several', () => {
    const text = (members: number) => noticeText({ code: 'partly-under-water', values: { members } });
    expect(text(1)).toMatch(/^1 member reaches/);
    expect(text(3)).toMatch(/^3 members reach/);
  });
});

describe('why an item counts or not', () => {
  it('puts a contradiction and a missing reason into words', () => {
    const contradiction = { field: 'fittingId', message: 'An earlier item has removed Pulpit.' };
    expect(reasons({ status: 'contradiction', contradiction })).toEqual([contradiction.message]);
    expect(reasons({ status: 'withheld' })).toEqual([
      'Safety-required: shown, but outside every total until a named person has given a reason.',
    ]);
  });

  it('names the person and the reason beside a counted safety item', () => {
    const safetyReason = { person: 'A. Skipper', reason: 'a higher rail stands outside it' };
    expect(reasons({ item: { ...item, safetyReason } })).toEqual([
      'Safety-required; reason by A. Skipper: a higher rail stands outside it',
    ]);
  });

  it('adds class rule, structure and moving parts', () => {
    const flags = {
      structural: true,
      movingPart: true,
      classRule: { ruling: 'not-allowed', rule: 'C.4' },
    } as const;
    expect(reasons({ item: { ...item, flags } })).toEqual([
      'Class rule C.4: not allowed.',
      "Structural: needs a licensed engineer and the class's word.",
      'Moving part: it can jam.',
    ]);
    expect(classRuleText({ ruling: 'needs-ruling', rule: '' })).toBe('Class rule: needs a ruling.');
  });
});

it('the cautions begin with what the numbers are and name the standards they defer to', () => {
  expect(cautions[0]).toMatch(/^Preliminary estimate\./);
  expect(cautions.join(' ')).toMatch(/ISO 15085:2024.*ISO 12215-10/);
});
