import type { Confidence } from '../../src/physics/sources';
import { calibrationSection } from './calibrationDocument';
import { median, table } from './documentTables';
import { faultsSection } from './faultsDocument';
import { judgeCheck, type Verdict } from './judgeCheck';
import { mutationSection } from './mutationDocument';
import { netHalfWidths } from './net';
import { checkKinds, type CheckKind, type PublishedCheck } from './publishedCheck';

interface Judged {
  readonly check: PublishedCheck;
  readonly verdict: Verdict;
}

const kindMeanings: Readonly<Record<CheckKind, string>> = {
  transcription:
    'a formula or table of the model against the numbers printed with it. It finds slips of the pen and proves nothing about the air.',
  external: "somebody else's worked answer, handbook value, formula or program, run through the model.",
  measurement: 'data that the model was not made from.',
};

const confidenceMeanings: Readonly<Record<Confidence, string>> = {
  read: 'the source itself was read, or the program run',
  'second-hand': 'the source was read in the words, code or notes of somebody who quotes it',
  'from memory': 'usual and plausible, but nothing was read',
  derived: 'worked out from the formula or the inputs that the source gives, apart from the model',
  'common practice, no source': 'carried about in the trade',
};

const topicNotes: Readonly<Record<string, string>> = {
  'Worked examples':
    'Force and power come from the whole fitting, with the coefficient typed as the answer states it. Steps that a source leaves out were worked out again from its inputs: they are "derived", and count as transcription.',
  'Round bar across the wind':
    'Curves that the band of the round bar was drawn around are measured data, but the model was made from them: they count as transcription, and the check is that the band still holds them.',
  'Finite length':
    "The model takes DNV's table. Wieselsberger's cylinders were not used to make it here. Jorgensen's chart is Goldstein's of 1938 at Re 88 000 and so Wieselsberger's once more; the table itself may go back to the same tunnel: the rows are not as independent as their number suggests.",
  'Wires and ropes':
    "Hoerner's cables and the design values are what the curves were made from. Stranded conductors were not; their abstracts name no speed, and Re 5e4 is taken. No measurement of a braided rope in air was found: it carries its wide band on design values alone.",
  'Elliptical sections':
    'Few sources, most of them from memory, and a wide band. No table of NACA TN 3038 or TR 619 was found to read; whether the Reynolds numbers that textbooks print with TR 619 are on the thickness or the chord is not known. No measurement off the axes was found: there the rule of components stands with its own band, half of the lift included.',
  Spheres:
    'The table was drawn through the formulas that are marked as transcription. Roughness is sand: dimples, seams and nets are something else.',
  'Nets and screens':
    'The curve was drawn through all of these; no measurement of a net in air that could stand apart from them was found.',
  'Pull tests':
    'No published pull test with its readings was found; the drag area is checked with a tunnel force from a textbook, the rest by hand.',
  Struts:
    'The bench of the fairing shows struts. The wall has no midline in it: a round tube is the exact ring; hollow ellipses are compared with a handbook fit. Nothing here speaks of eccentric loads or of a wall that buckles locally.',
  Vibration:
    'The bench of the fairing shows vibration. The Strouhal number is a flat 0.2 with a tenth to either side; whether and how far a member shakes is not computed, and nothing measured on a boat was found.',
  'Named shapes': 'The table holds these numbers; the checks find slips of the pen.',
  'Inclined bars and friction':
    "The bars have a typed coefficient of 1.1 and no friction; Hoerner's constant 0.02 for the friction is added to what they give.",
};

/** Five figures; powers of ten where decimals would be long. */
function five(value: number): string {
  if (Math.abs(value) < 1e-9) return '0';
  const size = Math.abs(value);
  return size < 1e-3 || size >= 1e6 ? value.toExponential(4) : value.toPrecision(5);
}

function percent(relative: number): string {
  const size = 100 * Math.abs(relative);
  if (size < 0.0005) return '< 0.001 %';
  return `${relative < 0 ? '-' : '+'}${size.toFixed(3)} %`;
}

function differenceText({ relative, difference }: Verdict): string {
  return relative === null ? five(difference) : percent(relative);
}

function computedText({ computed, band }: Verdict): string {
  return band === null ? five(computed) : `${five(computed)} (${five(band.low)} to ${five(band.high)})`;
}

function toleranceText({ tolerance, toleranceReason }: PublishedCheck): string {
  const size =
    'absolute' in tolerance
      ? String(Number(tolerance.absolute.toPrecision(3)))
      : `${Number((100 * tolerance.relative).toPrecision(3))} %`;
  return `${size}: ${toleranceReason}`;
}

function checkTable(judged: readonly Judged[]): string[] {
  const head = [
    'check',
    'kind',
    'what',
    'source',
    'confidence',
    'printed',
    'computed (low to high)',
    'difference',
    'tolerance and why',
  ];
  return table(
    head,
    judged.map(({ check, verdict }) => [
      check.id,
      check.kind,
      check.unit === '1' ? check.what : `${check.what} (${check.unit})`,
      `${check.source.title}; ${check.source.where}`,
      check.confidence,
      check.printedText,
      computedText(verdict),
      differenceText(verdict),
      toleranceText(check),
    ]),
  );
}

function unsigned(relative: number): string {
  return percent(relative).replace('+', '');
}

/** Differences of checks that ask for a number and of those that ask for a range have nothing to do with each other. */
function summaryRow(
  topic: string,
  kind: CheckKind,
  isRange: boolean,
  judged: readonly Judged[],
): string[] | null {
  const family = judged.filter(
    ({ check, verdict }) =>
      check.topic === topic && check.kind === kind && (verdict.band !== null) === isRange,
  );
  if (family.length === 0) return null;
  const sizes = family.flatMap(({ check, verdict: { relative } }) =>
    relative === null ? [] : [{ id: check.id, size: Math.abs(relative) }],
  );
  const largest = sizes.reduce((most, one) => (one.size > most.size ? one : most), { id: '', size: -1 });
  // Differences of the last bits of a double have an order, but no meaning.
  const largestText =
    largest.size < 5e-6 ? unsigned(largest.size) : `${unsigned(largest.size)} (${largest.id})`;
  return [
    topic,
    isRange ? `${kind}, inside a range` : kind,
    String(family.length),
    unsigned(median(sizes.map(({ size }) => size))),
    largestText,
  ];
}

/** Families without a number from outside, and the width that they carry for it. */
const netWidths = netHalfWidths();
const netWidthText = `${(100 * netWidths.low).toFixed(0)} to ${(100 * netWidths.high).toFixed(0)}`;

export const noneFound: Readonly<Record<string, string>> = {
  'Nets and screens': `none found: every curve found was used to draw the band, ${netWidthText} % to each side onto the face, half to twice along`,
  'Inclined bars and friction':
    'none found beside the formulas: a doubt of its own from 45 deg off the axis, 20 % at 30 deg, half along it',
  'Ledger arithmetic': 'sums and products, worked by hand: no doubt to carry',
  'Wind over the sea':
    'none found beside the formulas: the other views of open sea are a doubt of the wind law',
  'Apparent wind': 'trigonometry, worked by hand: no doubt to carry',
  Units: 'definitions: no doubt to carry',
};

/** One row a family: counts by kind, and the differences of what the model was not made from, disagreements included. */
function glanceRow(topic: string, judged: readonly Judged[]): string[] {
  const family = judged.filter(({ check }) => check.topic === topic);
  const countOf = (kind: CheckKind): string =>
    String(family.filter(({ check }) => check.kind === kind).length);
  const differences = (of: readonly Judged[]): string[] => {
    const sizes = of.flatMap(({ verdict: { relative } }) => (relative === null ? [] : [Math.abs(relative)]));
    return sizes.length === 0 ? ['', ''] : [unsigned(median(sizes)), unsigned(Math.max(...sizes))];
  };
  const outside = family.filter(({ check }) => check.kind !== 'transcription');
  const outsideText = outside.length === 0 ? [noneFound[topic] ?? 'none found', ''] : differences(outside);
  return [topic, ...checkKinds.map(countOf), ...differences(family), ...outsideText];
}

function countRow(kind: CheckKind, checks: readonly PublishedCheck[]): string[] {
  const ofKind = checks.filter((check) => check.kind === kind);
  const known = ofKind.filter(({ knownDisagreement }) => knownDisagreement !== undefined).length;
  return [kind, kindMeanings[kind], String(ofKind.length - known), String(known)];
}

function disagreementRow({ check, verdict }: Judged): string[] {
  return [
    check.id,
    check.kind,
    check.what,
    `${check.source.title}; ${check.source.where}`,
    check.confidence,
    check.printedText,
    five(verdict.computed),
    differenceText(verdict),
    check.knownDisagreement?.reason ?? '',
  ];
}

function introduction(checks: readonly PublishedCheck[]): string[] {
  return [
    '# Validation',
    '',
    'Published numbers, and what the code of this project gives for them. The tests run every check. This page is written by',
    '`npm run validation`, and the tests fail when it has gone stale.',
    '',
    'A check agrees when the computed value lies within the tolerance of the printed one. Where the model claims a range rather',
    'than a number, the range stands in brackets, and the printed value must lie in it, give or take the tolerance. No',
    'tolerance was widened to make a check pass: where model and source differ by more, the check stands under',
    '[Disagreements](#disagreements), is not counted as agreeing, and the tests notice when its size changes.',
    '',
    'Three kinds are counted apart, because they prove different things:',
    '',
    ...table(
      ['kind', 'meaning', 'agree', 'disagree'],
      checkKinds.map((kind) => countRow(kind, checks)),
    ),
    '',
    'How sure a source is:',
    '',
    ...table(['confidence', 'meaning'], Object.entries(confidenceMeanings)),
    '',
  ];
}

/** The whole of docs/validation.md: the same text for the same checks, on every machine. */
export function validationDocument(checks: readonly PublishedCheck[]): string {
  const judged = checks.map((check) => ({ check, verdict: judgeCheck(check) }));
  const agreeing = judged.filter(({ check }) => check.knownDisagreement === undefined);
  const disagreeing = judged.filter(({ check }) => check.knownDisagreement !== undefined);
  const topics = [...new Set(checks.map(({ topic }) => topic))];
  const summary = topics.flatMap((topic) =>
    checkKinds.flatMap((kind) =>
      [false, true].flatMap((isRange) => {
        const row = summaryRow(topic, kind, isRange, agreeing);
        return row === null ? [] : [row];
      }),
    ),
  );
  return [
    ...introduction(checks),
    '## Families',
    '',
    'Size of the difference between model and print, without its sign, over all checks of a family, disagreements included; and over',
    'those alone that the model was not made from (external and measurement). Where a range is claimed, the difference is that of its best',
    'value, so that a crisis read at one Reynolds number shows as a large one.',
    '',
    ...table(
      ['family', ...checkKinds, 'median', 'largest', 'median, not made from', 'largest, not made from'],
      topics.map((topic) => glanceRow(topic, judged)),
    ),
    '',
    '### By kind',
    '',
    'Size of the difference, without its sign, over the checks that agree (rows with a printed zero left out). Where a range is',
    'claimed, the difference is that of its best value, and only the range is held to.',
    '',
    ...table(['family', 'kind', 'checks', 'median', 'largest'], summary),
    '',
    '## Disagreements',
    '',
    'The model stays as it is, for the reason in the last column.',
    '',
    ...table(
      ['check', 'kind', 'what', 'source', 'confidence', 'printed', 'computed', 'difference', 'reason'],
      disagreeing.map(disagreementRow),
    ),
    '',
    ...calibrationSection(checks),
    '',
    ...faultsSection(),
    '',
    ...mutationSection(),
    ...topics.flatMap((topic) => [
      '',
      `## ${topic}`,
      '',
      ...(topicNotes[topic] === undefined ? [] : [topicNotes[topic], '']),
      ...checkTable(agreeing.filter(({ check }) => check.topic === topic)),
    ]),
    '',
  ].join('\n');
}
