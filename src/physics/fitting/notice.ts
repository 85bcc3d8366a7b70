import type { MemberGeometry } from '../member/memberGeometry';
import { netSolidityRange } from '../body/net';
import { sphereReynoldsRange } from '../body/sphereTable';
import { enLargestSlenderness } from '../section/endEffect';
import { isOutsideFairingTable } from '../section/fairingBand';
import { fairingRange } from '../section/fairingTable';
import { roundBarReynoldsRange } from '../section/roundBarTable';
import { wireReynoldsRange } from '../section/wireTable';
import {
  isMemberShape,
  type FittingInput,
  type MemberShape,
  type NetShape,
  type SectionShape,
  type Shape,
} from './fittingInput';
import type { MemberReach } from './memberReach';

/** Something a reader must know about a number; the words stand with the screens, the values here. */
export type NoticeCode =
  | 'wind-near-axis'
  | 'reynolds-outside-table'
  | 'fairing-outside-table'
  | 'net-outside-range'
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

/** Notices of one fitting from the air at its dry members and from where all its members lie. */
export function noticesOf(
  fitting: FittingInput,
  members: readonly MemberReach[],
  laid: readonly MemberGeometry[],
): Notice[] {
  return [...barNotices(fitting, members), ...waterNotices(members, laid)];
}

function barNotices(fitting: FittingInput, members: readonly MemberReach[]): Notice[] {
  const { shape } = fitting;
  const notices: Notice[] = [];
  for (const member of members) {
    if (member.localSpeedMs === 0) continue;
    if (isMemberShape(shape)) notices.push(...directionNotices(member), ...slendernessNotices(shape, member));
    notices.push(...tableNotices(shape, member.reynolds));
  }
  return oneOfEach(notices);
}

function directionNotices({ axisAngleRad }: MemberReach): Notice[] {
  if (axisAngleRad === null || axisAngleRad >= leastAxisAngleRad) return [];
  return [{ code: 'wind-near-axis', values: { angleRad: axisAngleRad } }];
}

/** Wires have no end effect, and a fairing's ends are not in the tables. */
function slendernessNotices({ kind }: MemberShape, { slenderness }: MemberReach): Notice[] {
  if (slenderness === null || kind === 'wire' || kind === 'fairing') return [];
  if (slenderness < leastSlenderness) return [{ code: 'slenderness-below-table', values: { slenderness } }];
  return slenderness > enLargestSlenderness
    ? [{ code: 'en-slenderness-stops', values: { slenderness } }]
    : [];
}

interface Reach {
  readonly from: number;
  readonly to: number;
}

/** Where the published values behind a shape end. A typed coefficient has no end. */
function tableNotices(shape: Shape, reynolds: number | null): Notice[] {
  if (shape.kind === 'net') return netNotices(shape);
  if (reynolds === null || ('coefficient' in shape && shape.coefficient !== null)) return [];
  if (shape.kind === 'fairing') return fairingNotices(shape, reynolds);
  const range = reynoldsRange(shape);
  if (range === null || (reynolds >= range.from && reynolds <= range.to)) return [];
  return [{ code: 'reynolds-outside-table', values: { reynolds, ...range } }];
}

function reynoldsRange(shape: Shape): Reach | null {
  switch (shape.kind) {
    case 'roundBar':
      return roundBarReynoldsRange;
    case 'wire':
      return shape.construction === 'rod' ? roundBarReynoldsRange : wireReynoldsRange;
    case 'sphere':
      return sphereReynoldsRange;
    default:
      return null;
  }
}

function fairingNotices({ chord, thickness }: SectionShape, reynolds: number): Notice[] {
  const thicknessRatio = thickness.valueM / chord.valueM;
  return isOutsideFairingTable(thicknessRatio, reynolds)
    ? [{ code: 'fairing-outside-table', values: { thicknessRatio, reynolds, ...fairingRange } }]
    : [];
}

function netNotices({ solidity }: NetShape): Notice[] {
  const { from, to } = netSolidityRange;
  const isInside = solidity >= from && solidity <= to;
  return isInside ? [] : [{ code: 'net-outside-range', values: { solidity, from, to } }];
}

/** The first notice of each code. */
export function oneOfEach(notices: readonly Notice[]): Notice[] {
  return notices.filter(({ code }, i) => notices.findIndex((other) => other.code === code) === i);
}

function waterNotices(members: readonly MemberReach[], laid: readonly MemberGeometry[]): Notice[] {
  if (members.length === 0) return [{ code: 'under-water', values: { members: laid.length } }];
  const wet = laid.filter(({ dryFrom, dryTo }) => dryFrom > 0 || dryTo < 1).length;
  return wet > 0 ? [{ code: 'partly-under-water', values: { members: wet } }] : [];
}
