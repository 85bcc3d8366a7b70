import type { Notice, NoticeCode } from '../../physics/fitting/notice';
import { formatQuantity, formatValue } from '../../units/print';

type Values = Notice['values'];

const texts: Record<NoticeCode, (values: Values) => string> = {
  'wind-near-axis': ({ angleRad = 0 }) =>
    `The wind lies ${formatQuantity(angleRad, 'deg')} off the axis; the cross-flow principle is measured down to 45°. Value kept, with a doubt of its own; not to be trusted.`,
  'reynolds-outside-table': ({ reynolds = 0, from = 0, to = 0 }) =>
    `Reynolds number ${formatValue(reynolds, '1')} lies outside the table, ${formatValue(from, '1', { decimals: 0 })} to ${formatValue(to, '1', { decimals: 0 })}; the nearest value is used.`,
  'fairing-outside-table': ({ thicknessRatio = 0, reynolds = 0, ...range }) =>
    `Thickness over chord ${formatValue(thicknessRatio, '1', { decimals: 2 })} at a Reynolds number of ${formatValue(reynolds, '1')} on the chord lies outside the section table (${formatValue(range['thicknessFrom'] ?? 0, '1', { decimals: 2 })} to ${formatValue(range['thicknessTo'] ?? 0, '1', { decimals: 2 })}, ${formatValue(range['reynoldsFrom'] ?? 0, '1', { decimals: 0 })} to ${formatValue(range['reynoldsTo'] ?? 0, '1', { decimals: 0 })}); the nearest is used, with half as much doubt again.`,
  'net-outside-range': ({ solidity = 0, from = 0, to = 0 }) =>
    `A solidity of ${formatValue(solidity, '1', { decimals: 2 })} lies outside what was measured, ${formatValue(from, '1', { decimals: 1 })} to ${formatValue(to, '1', { decimals: 1 })}.`,
  'slenderness-below-table': ({ slenderness = 0 }) =>
    `Length over diameter ${formatValue(slenderness, '1')} lies below 2, where the end-effect table begins; its first value is used.`,
  'en-slenderness-stops': () =>
    'The end effect of EN 1991-1-4 stops at a slenderness of 70; beyond it that rule fades to no end effect at 200.',
  'partly-under-water': ({ members = 0 }) =>
    `${formatValue(members, '1', { decimals: 0 })} ${members === 1 ? 'member reaches' : 'members reach'} below the water; what is under water is left out.`,
  'under-water': () => 'All of it is under water: no force.',
  'shelter-removed': () => 'What shelters it is gone after the plan: its exposure is now in doubt.',
  'deck-among-waves': ({ spanShare = 0 }) =>
    `Deck height lies among the waves; the wind laws differ by ${formatValue(100 * spanShare, '1')} % in the total air power.`,
};

/** A notice in one sentence. */
export function noticeText(notice: Notice): string {
  return texts[notice.code](notice.values);
}
