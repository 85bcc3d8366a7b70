import { coefficientText, forceText, powerText } from './handbookWords';
import type { EnvelopeCheck, EnvelopeHandbook, EnvelopeSpeedTable } from './envelopeCheck';
import {
  envelopeFieldIds,
  envelopeLabels,
  envelopeOptions,
  type ChoiceFieldId,
  type EnvelopeTexts,
} from './envelopeTexts';
import { quantityIn, valueIn } from '../../units/printIn';

/**
 * Text that cannot become markup: one line, every sign that Markdown or HTML gives a meaning to escaped, and no address that
 * a reader would make into a link by itself.
 */
export function plainMarkdown(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Surrogate}]+/gu, ' ')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .trim()
    .replace(/[\\`*_{}[\]#|~$]/g, '\\$&')
    .replace(/^[-=+]/, '\\$&')
    .replace(/^(\d+)([.)])(?=\s|$)/, '$1\\$2')
    .replace(/:\/\//g, ':\u200b//')
    .replace(/\bwww\./gi, (start) => `${start.slice(0, 3)}\u200b.`)
    .replace(/@/g, '@\u200b');
}

/** Words of ours: signs with a meaning are rare in them, and are escaped all the same. */
const ours = plainMarkdown;

function list(lines: readonly string[]): string[] {
  return lines.map((line) => `- ${ours(line)}`);
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', `## ${title}`, '', ...lines];
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)];
}

function shown(id: (typeof envelopeFieldIds)[number], text: string): string {
  const options = id in envelopeOptions ? envelopeOptions[id as ChoiceFieldId] : [];
  return plainMarkdown(options.find((option) => option.id === text)?.label ?? text);
}

function writtenLines(texts: EnvelopeTexts): string[] {
  return envelopeFieldIds.flatMap((id) => {
    const text = texts[id] ?? '';
    return text.trim() === '' ? [] : [`- ${ours(envelopeLabels[id])}: ${shown(id, text)}`];
  });
}

const verdicts = new Map([
  [true, 'follows'],
  [false, 'does not follow'],
]);

function stepRows({ steps }: EnvelopeCheck): string[][] {
  return steps.map(({ label, formula, givenSi, agrees, unit }) => [
    ours(label),
    ours(formula),
    givenSi === null ? '' : ours(quantityIn(givenSi, unit)),
    agrees === null ? '' : (verdicts.get(agrees) ?? ''),
  ]);
}

function handbookLines(handbook: EnvelopeHandbook): string[] {
  return [
    `- ${ours(`${handbook.shapeLabel}: Cd ${coefficientText(handbook.coefficient)} on ${handbook.areaBase}`)}`,
    `- ${ours(`Force ${forceText(handbook.forceN)}, air power ${powerText(handbook.airPowerW)}`)}`,
    ...list(handbook.sentences),
    ...list(handbook.notices),
    ...list(handbook.sources.map((source) => `Source: ${source}`)),
  ];
}

function speedLines({ rows, speedUnit }: EnvelopeSpeedTable): string[] {
  const number = (value: number | null, unit: 'N' | 'W'): string =>
    value === null ? '' : ours(quantityIn(value, unit));
  return table(
    [
      'Wind speed',
      'Cd, handbook',
      'Force, handbook',
      'Air power, handbook',
      'Force, envelope',
      'Air power, envelope',
    ],
    rows.map((row) => [
      ours(quantityIn(row.speedMs, speedUnit)),
      row.handbookCoefficient === null ? '' : ours(valueIn(row.handbookCoefficient, '1', { decimals: 2 })),
      row.handbookForceN === null ? '' : ours(forceText(row.handbookForceN)),
      row.handbookAirPowerW === null ? '' : ours(powerText(row.handbookAirPowerW)),
      number(row.envelopeForceN, 'N'),
      number(row.envelopeAirPowerW, 'W'),
    ]),
  );
}

/** The whole check as Markdown, to paste into a message. Whatever was typed stays text. */
export function envelopeMarkdown(texts: EnvelopeTexts, check: EnvelopeCheck): string {
  const { handbook, speedTable, track } = check;
  const steps = stepRows(check);
  return [
    '# Envelope check',
    '',
    ours([check.summary, handbook?.verdict?.sentence ?? ''].join(' ').trim()),
    ...section('As written', writtenLines(texts)),
    ...section('Worked again', steps.length === 0 ? [] : table(['', 'Formula', 'Written', ''], steps)),
    ...section('What does not follow', list(check.mismatches.map(({ sentence }) => sentence))),
    ...section('Slips that fit', [
      ...(check.slipLead === null ? [] : [ours(check.slipLead), '']),
      ...list(check.slips.map(({ label, sentence }) => `${label}. ${sentence}`)),
    ]),
    ...section('What a handbook uses', handbook === null ? [] : handbookLines(handbook)),
    ...section('Over the wind speed', speedTable === null ? [] : speedLines(speedTable)),
    ...section('Air power and track power', track === null ? [] : list([track.formula, ...track.sentences])),
    ...section('Taken, because it was not written', list(check.assumptions)),
    '',
    'A preliminary estimate, for wind square to the shape.',
    '',
  ].join('\n');
}
