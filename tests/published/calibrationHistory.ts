/** A count of the calibration as it once stood: it cannot be computed again, since what was read has changed. */
export interface EarlierCount {
  readonly covered: number;
  readonly groups: number;
  /** What had changed since the count before. */
  readonly change: string;
}

/** Every count in its order, so that a reader sees which clause came before and which after a number was known. */
export const earlierCounts: readonly EarlierCount[] = [
  {
    covered: 86,
    groups: 97,
    change: 'the first: half of the range beyond three or more sources; of fewer, the widths that shipped',
  },
  {
    covered: 85,
    groups: 97,
    change: 'rule: of fewer than three sources 15 to 50 % of the middle instead of the widths that shipped',
  },
  {
    covered: 76,
    groups: 86,
    change: 'count: what is no source about the band left out',
  },
  {
    covered: 83,
    groups: 91,
    change: 'read: spheres of Roos and Willmarth, Morsi and Alexander, and Achenbach’s figure',
  },
  {
    covered: 85,
    groups: 92,
    change:
      'read: the whole of Wieselsberger’s curve; asked: a band drawn by hand may miss the rule’s width by a tenth',
  },
  {
    covered: 87,
    groups: 94,
    change: 'read: Abbott and von Doenhoff’s lift from 1.9 deg up, discs of Roos and Willmarth',
  },
];

/** What has changed since the last of them. */
export const latestChange =
  'placed as well: Abbott and von Doenhoff’s lift at 0.94 deg, nets of Richards and Robinson at solidity 0.3, of Taylor at 0.15, of diamonds at 0.1';
