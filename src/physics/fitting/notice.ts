import type { MemberGeometry } from '../member/memberGeometry';
import { enLargestSlenderness } from '../section/endEffect';
import { roundBarReynoldsRange } from '../section/roundBarTable';
import { isMemberShape, type FittingInput, type MemberShape } from './fittingInput';
import type { MemberTrace } from './memberTrace';

/** Something a reader must know about a number; the words stand with the screens, the values here. */
export type NoticeCode =
  | 'wind-near-axis'
  | 'reynolds-outside-table'
  | 'slenderness-below-table'
  | 'en-slenderness-stops'
  | 'partly-under-water'
  | 'under-water'
  | 'shelter-removed'
  | 'deck-among-waves';

export interface Notice {
  readonly code: NoticeCode;
  readonly values: Readonly<Record<string, number>>;
}

/** The cross-flow principle is measured down to this angle between wind and axis. */
const leastAxisAngleRad = Math.PI / 4;
/** The end-effect tables begin at this slenderness. */
const leastSlenderness = 2;

/** Notices of one fitting from the traces of its dry members and from where all its members lie. */
export function noticesOf(
  fitting: FittingInput,
  members: readonly MemberTrace[],
  laid: readonly MemberGeometry[],
): Notice[] {
  return [...barNotices(fitting, members), ...waterNotices(members, laid)];
}

function barNotices(fitting: FittingInput, members: readonly MemberTrace[]): Notice[] {
  const { shape } = fitting;
  if (!isMemberShape(shape)) return [];
  const notices: Notice[] = [];
  for (const member of members) {
    const { axisAngleRad, reynolds, slenderness, localSpeedMs } = member;
    if (localSpeedMs === 0) continue;
    if (axisAngleRad !== null && axisAngleRad < leastAxisAngleRad) {
      notices.push({ code: 'wind-near-axis', values: { angleRad: axisAngleRad } });
    }
    if (reynolds !== null && usesRoundBarTable(shape) && isOutsideTable(reynolds)) {
      notices.push({ code: 'reynolds-outside-table', values: { reynolds } });
    }
    if (slenderness === null) continue;
    if (slenderness < leastSlenderness)
      notices.push({ code: 'slenderness-below-table', values: { slenderness } });
    if (slenderness > enLargestSlenderness)
      notices.push({ code: 'en-slenderness-stops', values: { slenderness } });
  }
  return oneOfEach(notices);
}

function usesRoundBarTable({ kind, coefficient }: MemberShape): boolean {
  return kind === 'roundBar' && coefficient === null;
}

function isOutsideTable(reynolds: number): boolean {
  return reynolds > roundBarReynoldsRange.to || reynolds < roundBarReynoldsRange.from;
}

/** The first notice of each code. */
export function oneOfEach(notices: readonly Notice[]): Notice[] {
  return notices.filter(({ code }, i) => notices.findIndex((other) => other.code === code) === i);
}

function waterNotices(members: readonly MemberTrace[], laid: readonly MemberGeometry[]): Notice[] {
  if (members.length === 0) return [{ code: 'under-water', values: { members: laid.length } }];
  const wet = laid.filter(({ dryFrom, dryTo }) => dryFrom > 0 || dryTo < 1).length;
  return wet > 0 ? [{ code: 'partly-under-water', values: { members: wet } }] : [];
}
