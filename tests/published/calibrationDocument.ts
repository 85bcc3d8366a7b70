import {
  allRegimes,
  calibrate,
  isCovered,
  isWidthAllowed,
  notCounted,
  widthOf,
  type CalibratedRegime,
  type LeftOut,
  type NotCounted,
} from './calibration';
import { earlierCounts, latestChange } from './calibrationHistory';
import { knownNarrow, knownUncovered, knownWidths } from './calibrationKnown';
import { table } from './documentTables';
import type { Band, PublishedCheck, SeriesBasis } from './publishedCheck';

const bases: readonly SeriesBasis[] = ['measured', 'fit', 'handbook', 'computed'];

function bandText({ low, high }: Band): string {
  return `${low.toFixed(2)} to ${high.toFixed(2)}`;
}

function share(count: number, all: number): string {
  return all === 0 ? 'none' : `${count} of ${all} (${((100 * count) / all).toFixed(1)} %)`;
}

/** Groups that have another source beside them, of one basis or of all. */
function tested(regimes: readonly CalibratedRegime[], basis: SeriesBasis | null): LeftOut[] {
  return regimes.flatMap(({ leftOut }) =>
    leftOut.filter((left) => left.insideRule !== null && (basis === null || left.basis === basis)),
  );
}

function coveredByRule(groups: readonly LeftOut[]): string {
  return share(
    groups.filter(({ insideRule, points }) => isCovered(insideRule ?? 0, points)).length,
    groups.length,
  );
}

function coverageRow(name: string, groups: readonly LeftOut[]): string[] {
  const covered = (insideOf: (left: LeftOut) => number | null): string =>
    share(groups.filter((left) => isCovered(insideOf(left) ?? 0, left.points)).length, groups.length);
  return [
    name,
    covered((left) => left.insideRule),
    covered((left) => left.insideMargins),
    covered((left) => left.insideShipped),
  ];
}

function coverage(regimes: readonly CalibratedRegime[]): string[] {
  return table(
    ['left out', 'by the rule', 'shipped band moved with the others', 'shipped band, which knows it'],
    [
      coverageRow('all', tested(regimes, null)),
      ...bases.map((basis) => coverageRow(basis, tested(regimes, basis))),
    ],
  );
}

const otherNumbers = [
  { name: 'three or more others', isIn: (others: number): boolean => others >= 3 },
  { name: 'two others', isIn: (others: number): boolean => others === 2 },
  { name: 'one other', isIn: (others: number): boolean => others === 1 },
];

/** The share covered where many, two or one other source speak. */
function othersRows(regimes: readonly CalibratedRegime[]): string[][] {
  return otherNumbers.map(({ name, isIn }) => {
    const groups = regimes
      .filter(({ sources }) => isIn(sources.length - 1))
      .flatMap(({ leftOut }) => leftOut);
    return [name, coveredByRule(groups)];
  });
}

function historyRows(regimes: readonly CalibratedRegime[]): string[][] {
  return [
    ...earlierCounts.map(({ covered, groups, change }) => [share(covered, groups), change]),
    [coveredByRule(tested(regimes, null)), latestChange],
  ];
}

/** How far the share can be trusted, and how it came about. */
function worth(regimes: readonly CalibratedRegime[]): string[] {
  return [
    'What the share is worth. Fits and handbooks stand on tunnels that are counted beside them, so that the groups are fewer than they seem; by',
    'their number alone the share is good to about five in a hundred to either side. Of the rule only the half range beyond three or more',
    'sources stood before any count. The clause of 15 to 50 % for fewer was set with the first count known, the list of what is left out with',
    'the second, the tenth that is given to widths drawn by hand with the fourth, and 90 % became the limit of the test (it had been 87 %) with',
    'the sixth. Edges of bands were redrawn in between; none enters this column.',
    '',
    ...table(['by the rule', 'what had changed'], historyRows(regimes)),
    '',
    'Readings out of a table or a digitised curve were taken by position (nearest to 1, 2 and 5 times a power of ten, or all of them), none',
    'for its place; of Roos and Willmarth’s two at exactly Re 1000 the first listed (0.472, the other 0.483). A lift of nought at nought',
    'incidence, where Abbott and von Doenhoff begin, has no place. Curves in closed form were taken at Reynolds numbers and solidities of our choice.',
  ];
}

function insideText({ insideRule, points }: LeftOut): string {
  if (insideRule === null) return 'alone';
  return `${insideRule}/${points}${isCovered(insideRule, points) ? '' : ' missed'}`;
}

function regimeRow(calibrated: CalibratedRegime): string[] {
  const { regime, isFewSources, range, rule, shipped, leftOut } = calibrated;
  const width = widthOf(calibrated);
  const text = isFewSources ? `half ${(100 * width).toFixed(0)} %` : `${(2 * width).toFixed(2)} x range`;
  return [
    isFewSources ? `${regime} (few sources)` : regime,
    leftOut.map((left) => `${left.source} (${left.basis}) ${insideText(left)}`).join('; '),
    bandText(range),
    bandText(rule),
    bandText(shipped),
    `${departure(shipped.low, rule.low)} / ${departure(shipped.high, rule.high)}`,
    isWidthAllowed(calibrated) ? text : `${text}, not allowed`,
  ];
}

function notCountedRow({ regime, source, reason, points, inside }: NotCounted): string[] {
  const places = points.map(({ place }) => place);
  const range = bandText({ low: Math.min(...places), high: Math.max(...places) });
  const verdict =
    inside === null ? 'no other source' : isCovered(inside, points.length) ? 'covered' : 'missed';
  return [regime, source, String(points.length), range, verdict, reason];
}

function leftOutSection(checks: readonly PublishedCheck[]): string[] {
  const out = notCounted(checks);
  const tried = out.filter(({ inside }) => inside !== null);
  const covered = tried.filter(({ inside, points }) => isCovered(inside ?? 0, points.length));
  const all = tested(allRegimes(checks), null);
  return [
    '### Left out of the count, and why',
    '',
    'Published checks all the same, and held to above; but no source about the band: a flow that the model says it is not of, a number',
    'read where nothing was measured, or a measurement that is counted already under its first name. The list was made by going through',
    'every source with these three questions, whatever its verdict. "Verdict" is what the rule would have said',
    `with everything counted: ${covered.length} covered, ${tried.length - covered.length} missed. The share of all groups would then be ${coveredByRule(all)}.`,
    '',
    ...table(['regime', 'source', 'points', 'places', 'verdict', 'why'], out.map(notCountedRow)),
  ];
}

/** How far a shipped edge lies from the rule's, in units of the best value. */
function departure(shipped: number, rule: number): string {
  const difference = shipped - rule;
  return `${difference < 0 ? '-' : '+'}${Math.abs(difference).toFixed(2)}`;
}

/** The part of docs/validation.md about leaving one source out. */
export function calibrationSection(checks: readonly PublishedCheck[]): string[] {
  const regimes = calibrate(checks);
  const alone = regimes.flatMap(({ leftOut }) => leftOut.filter(({ insideRule }) => insideRule === null));
  return [
    '## Calibration of the doubt',
    '',
    'Would a source that was not read have fallen inside the band? Each source is left out of its regime in turn, and the band is',
    'built again from the others. A published number is placed by what it is over the model’s best value under the same',
    'conditions (Reynolds number, incidence, thickness, solidity), 1 being the model; the best curve itself is kept, though the',
    'source had its part in it.',
    '',
    'Bands are drawn by hand into the tables, about the edges of what was read. The rule they are held to: **from the lowest to the',
    'highest place of any source, and half of that range further to each side; of fewer than three sources at least 15 % and at most',
    '50 % of the middle to each side.** No width that ships enters the rule, so that none can know the source that is left out. For',
    'sources drawn from one normal distribution it holds the next one in 55 % of cases for two others, 76 % for three, 91 % for five,',
    '97 % for eight: two that agree say little. Where sources scatter by a tenth, the least width brings two others to 81 % and one',
    'to 71 %. Design curves of codes, design values for ropes, the table of sections and rules of thumb are no sources. A group is one source',
    'in one regime; it is covered with two thirds of its points inside.',
    '',
    'Two more columns: the shipped band moved with the others (as far beyond their outermost place as it lies beyond the outermost of all), and',
    'the shipped band as it is, which knows the source that is left out and so proves nothing but that the bands hold what was read.',
    '',
    ...worth(regimes),
    '',
    'Asked: 90 % of the groups covered; a shipped band at most twice as wide as the range of three or more sources; with fewer, a',
    'half-width from the rule’s (15 % or more; drawn by hand, so give or take a tenth) to 50 % of the middle of the band. Low and high of a',
    'shipped band are averaged over the points of a regime.',
    '',
    ...coverage(regimes),
    '',
    'By the number of other sources that the band was built from:',
    '',
    ...table(['others', 'by the rule'], othersRows(regimes)),
    '',
    `Groups that stand alone in their regime: ${alone.length}; nothing can be left out there, and only the width is held to.`,
    `Widths as asked: ${share(regimes.filter(isWidthAllowed).length, regimes.length)} regimes.`,
    '',
    '### Missed',
    '',
    ...table(
      ['regime', 'source', 'why the band stays'],
      knownUncovered.map(({ regime, source, reason }) => [regime, source, reason]),
    ),
    '',
    '### Widths that are not as asked',
    '',
    ...table(
      ['regime', 'why the band stays'],
      knownWidths.map(({ regime, reason }) => [regime, reason]),
    ),
    '',
    '### Shipped bands narrower than the rule',
    '',
    'By more than a tenth of the rule’s width, where three or more sources speak. The rule pools the places of a regime; the shipped band goes',
    'by the sources at about the same Reynolds number, incidence or solidity.',
    '',
    ...table(
      ['regime', 'why the band stays'],
      knownNarrow.map(({ regime, reason }) => [regime, reason]),
    ),
    '',
    ...leftOutSection(checks),
    '',
    '### Every regime',
    '',
    'Places over the model’s best. "Shipped less rule" is how far the low and the high edge that ship lie from the rule on',
    'all sources: a positive first and a negative second number mean a shipped band inside the rule’s.',
    '',
    ...table(
      [
        'regime',
        'sources, points inside when left out',
        'range',
        'rule',
        'shipped',
        'shipped less rule',
        'width',
      ],
      regimes.map(regimeRow),
    ),
  ];
}
