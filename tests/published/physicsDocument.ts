import { netQuantities, netSolidityRange } from '../../src/physics/body/net';
import { pullTestQuantities } from '../../src/physics/body/pullTest';
import { sphereRegimes } from '../../src/physics/body/sphere';
import { sphereReynoldsRange } from '../../src/physics/body/sphereTable';
import type { Shape } from '../../src/physics/fitting/fittingInput';
import { memberQuantities, type MemberTraceKey } from '../../src/physics/fitting/memberTrace';
import { outcomeQuantities } from '../../src/physics/fitting/outcome';
import { dutyQuantities, memberQuantitiesFor } from '../../src/physics/fitting/workingQuantities';
import type { Quantity } from '../../src/physics/quantity';
import { fairingRegimes } from '../../src/physics/section/fairing';
import { fairingRange } from '../../src/physics/section/fairingTable';
import { rectangleRegimes } from '../../src/physics/section/rectangle';
import { roundBarRegimes } from '../../src/physics/section/roundBar';
import { roundBarReynoldsRange } from '../../src/physics/section/roundBarTable';
import { thicknessRowQuantities } from '../../src/physics/section/thicknessCurve';
import { laidWireRegimes } from '../../src/physics/section/wire';
import { wireReynoldsRange } from '../../src/physics/section/wireTable';
import { sources, type Source } from '../../src/physics/sources';
import { strutQuantities } from '../../src/physics/strut/strutQuantities';
import { turningQuantities } from '../../src/physics/strut/turningQuantities';
import { sheddingQuantities } from '../../src/physics/vibration/shedding';
import { vibrationQuantities } from '../../src/physics/vibration/vibration';
import { openSeaLogLaw } from '../../src/physics/wind/windProfile';
import { table } from './documentTables';

/**
 * The parts of docs/physics.md that are written from the tables which the app shows: symbols, units, equations and sources
 * of each result, families with their regimes and ranges, and the bibliography. The prose around them is by hand.
 */
const parts: Readonly<Record<string, () => readonly string[]>> = {
  member: () => quantityTable(memberQuantities),
  families: familyTable,
  'family equations': familyEquations,
  net: () => quantityTable(netQuantities),
  'pull test': () => quantityTable(pullTestQuantities),
  strut: () => quantityTable(strutQuantities),
  turning: () => quantityTable(turningQuantities),
  shedding: () => quantityTable(sheddingQuantities),
  vibration: () => quantityTable(vibrationQuantities),
  'thickness curve': () => quantityTable(thicknessRowQuantities),
  outcome: () => quantityTable(outcomeQuantities),
  duty: () => quantityTable(dutyQuantities),
  sources: sourceTable,
};

const begin = (name: string): string => `<!-- from the tables: ${name} -->`;
const end = '<!-- end -->';

/**
 * The document with its written parts made anew.
 * @throws where the text lacks a part, or has one that is not known: then it would go stale in silence.
 */
export function withWrittenParts(text: string): string {
  const found = [...text.matchAll(/<!-- from the tables: (.+?) -->/g)].map(([, name]) => name ?? '');
  const wanted = Object.keys(parts);
  const wrong = [
    ...wanted.filter((name) => !found.includes(name)),
    ...found.filter((name) => !wanted.includes(name)),
  ];
  if (wrong.length > 0) throw new Error(`docs/physics.md and its tables disagree about: ${wrong.join(', ')}`);
  return wanted.reduce(withPart, text);
}

function withPart(text: string, name: string): string {
  const from = text.indexOf(begin(name)) + begin(name).length;
  const to = text.indexOf(end, from);
  if (to < from) throw new Error(`docs/physics.md: the part ${name} has no end`);
  return `${text.slice(0, from)}\n\n${(parts[name]?.() ?? []).join('\n')}\n\n${text.slice(to)}`;
}

function quantityTable(quantities: Readonly<Record<string, Quantity>>): string[] {
  return table(
    ['symbol', 'what', 'unit', 'equation', 'source'],
    Object.values(quantities).map(({ symbol, label, unit, equation, source }) => [
      code(symbol),
      label,
      unit === '1' ? '' : unit,
      equation === undefined ? '' : code(equation),
      source ?? '',
    ]),
  );
}

/** As it stands: an equation's stars and underscores are no emphasis. */
function code(text: string): string {
  return `\`${text}\``;
}

function reynoldsText({ from, to }: { readonly from: number; readonly to: number }): string {
  return `Re ${from.toExponential(0).replace('+', '')} to ${to.toExponential(0).replace('+', '')}`;
}

function familyTable(): string[] {
  const { thicknessFrom, thicknessTo, reynoldsFrom, reynoldsTo } = fairingRange;
  return table(
    ['family', 'regimes', 'range; outside, the nearest and a notice'],
    [
      ['round bar', roundBarRegimes.join(', '), reynoldsText(roundBarReynoldsRange)],
      ['wire and rope', laidWireRegimes.join(', '), reynoldsText(wireReynoldsRange)],
      ['ellipse', roundBarRegimes.join(', '), `the round bar’s, on the chord; few sources`],
      ['rectangle', rectangleRegimes.join(', '), 'any'],
      [
        'fairing',
        fairingRegimes.join(', '),
        `t/c ${thicknessFrom} to ${thicknessTo}, chord ${reynoldsText({ from: reynoldsFrom, to: reynoldsTo })}`,
      ],
      ['sphere', sphereRegimes.join(', '), reynoldsText(sphereReynoldsRange)],
      ['net', 'net', `solidity ${netSolidityRange.from} to ${netSolidityRange.to}`],
    ],
  );
}

const size = { valueM: 1, basis: 'measured', doubtId: '' } as const;
const memberParts = {
  coefficient: null,
  coefficientDoubtId: '',
  friction: true,
  ends: ['free', 'free'],
} as const;
const section = {
  chord: size,
  thickness: size,
  cornerRadiusM: 0,
  direction: { kind: 'fixed', angleRad: 0 },
  directionDoubtId: '',
  ...memberParts,
} as const;

/** One of each family; only the kind matters for its equations. */
const families: readonly (readonly [name: string, shape: Shape])[] = [
  ['wire of one strand', { kind: 'wire', construction: 'spiralStrand', diameter: size, ...memberParts }],
  ['rope, braided', { kind: 'wire', construction: 'braidedRope', diameter: size, ...memberParts }],
  ['ellipse', { kind: 'ellipticalBar', ...section }],
  ['rectangle', { kind: 'rectangularBar', ...section }],
  ['fairing', { kind: 'fairing', ...section }],
  ['sphere', { kind: 'sphere', diameter: size, roughnessM: 0, coefficient: null, coefficientDoubtId: '' }],
  ['net', { kind: 'net', facing: 'x', width: size, height: size, solidity: 0.3, wireDiameter: size }],
  [
    'body by three axes',
    {
      kind: 'bluffBody',
      length: size,
      width: size,
      height: size,
      cornerRadiusM: 0,
      coefficients: { x: null, y: null, z: null },
      coefficientDoubtId: '',
    },
  ],
  ['measured drag area', { kind: 'measuredArea', dragAreaM2: { best: 1, low: 1, high: 1 }, doubtId: '' }],
];

/** What each family has otherwise than the round bar. */
function familyEquations(): string[] {
  const rows = families.flatMap(([name, shape]) => {
    const own = memberQuantitiesFor(shape, 'dnv', openSeaLogLaw);
    const common: Readonly<Record<MemberTraceKey, Quantity>> = memberQuantities;
    return Object.entries(own)
      .filter(([key, quantity]) => isOwn(quantity, common[key as MemberTraceKey]))
      .map(([, { symbol, label, equation, source }]) => [
        name,
        code(symbol),
        label,
        equation === undefined ? '' : code(equation),
        source ?? '',
      ]);
  });
  return table(['family', 'symbol', 'what', 'equation', 'source'], rows);
}

function isOwn(quantity: Quantity, common: Quantity): boolean {
  // The wind law and the end effect go by the methods, not by the family.
  if (['W', 'k'].includes(quantity.symbol)) return false;
  return (
    quantity.label !== common.label ||
    quantity.equation !== common.equation ||
    quantity.source !== common.source
  );
}

function sourceTable(): string[] {
  const all: readonly (readonly [string, Source])[] = Object.entries(sources);
  return table(
    ['id', 'title', 'how sure'],
    all.map(([id, { title, confidence }]) => [id, title, confidence]),
  );
}
