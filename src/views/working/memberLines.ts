import type { SailingState } from '../../physics/condition/sailingState';
import type { FittingInput } from '../../physics/fitting/fittingInput';
import { memberQuantities, type MemberTraceKey } from '../../physics/fitting/memberTrace';
import {
  conditionSymbols,
  memberQuantitiesFor,
  windHeight,
  type MemberQuantities,
} from '../../physics/fitting/workingQuantities';
import type { ProjectMethods } from '../../project/file/schema';
import type { KnownSymbols, SymbolValue } from './formula';
import { memberNote } from './memberNotes';
import { present, workingLine, type LineInput, type WorkingLine } from './workingLine';
import type { WorkingSide } from './workingSides';

/** Where a number of the trace stands: in one of the chain's groups, as the range of another, or among the totals. */
type Place = 'wind' | 'section' | 'force' | 'range' | 'total';

/** Every number of the trace has a place here, or this does not compile. */
const places = {
  heightM: 'wind',
  lowestHeightM: 'range',
  highestHeightM: 'range',
  trueWindMs: 'wind',
  apparentSpeedMs: 'wind',
  apparentAngleFromBowRad: 'wind',
  apparentAngleFromCourseRad: 'wind',
  localAngleFromCourseRad: 'wind',
  exposure: 'wind',
  localSpeedMs: 'wind',
  dynamicPressurePa: 'wind',
  axisAngleRad: 'section',
  crossSpeedMs: 'section',
  incidenceRad: 'section',
  reynolds: 'section',
  crisisReynolds: 'section',
  coefficientBest: 'section',
  coefficientLow: 'range',
  coefficientHigh: 'range',
  liftCoefficient: 'section',
  slenderness: 'section',
  endFactor: 'section',
  frictionCoefficient: 'section',
  dryLengthM: 'force',
  areaM2: 'force',
  dragAlongWindN: 'force',
  dragAreaM2: 'force',
  forceTrackXN: 'force',
  forceTrackYN: 'total',
  forceTrackZN: 'total',
  trackPowerW: 'total',
  airPowerW: 'total',
} as const satisfies Record<MemberTraceKey, Place>;

const memberKeys = Object.keys(memberQuantities) as readonly MemberTraceKey[];

export interface LineGroup {
  readonly title: string;
  readonly lines: readonly WorkingLine[];
}

const groupTitles: readonly (readonly [Place, string])[] = [
  ['wind', 'wind at its place'],
  ['section', 'coefficient'],
  ['force', 'area and force'],
];

/** The chain of one member from the wind to its force, by looping over the table of its trace. */
export function memberGroups(
  sides: readonly WorkingSide[],
  state: SailingState,
  methods: ProjectMethods,
): LineGroup[] {
  const tables = sides.map(({ input }) =>
    input === null ? null : memberQuantitiesFor(input.shape, methods.ends, methods.windLaw),
  );
  const known = sides.map((side) => knownOf(side, state));
  return groupTitles
    .map(([place, title]) => {
      const keys = memberKeys.filter((key) => places[key] === place);
      return { title, lines: present(keys.map((key) => memberLine(key, sides, tables, known, methods))) };
    })
    .filter(({ lines }) => lines.length > 0);
}

/** The table of the first side that has the number: the two differ only where a plan changes the kind of shape. */
function memberLine(
  key: MemberTraceKey,
  sides: readonly WorkingSide[],
  tables: readonly (MemberQuantities | null)[],
  known: readonly KnownSymbols[],
  methods: ProjectMethods,
): WorkingLine | null {
  const first = sides.findIndex(({ lead }) => (lead?.[key] ?? null) !== null);
  const table = tables[first] ?? memberQuantities;
  return workingLine(
    key,
    table[key],
    sides.map((side) => inputOf(key, side, methods)),
    known,
  );
}

function inputOf(key: MemberTraceKey, side: WorkingSide, methods: ProjectMethods): LineInput {
  const { lead, input } = side;
  if (lead === null) return { value: null };
  const note = memberNote(key, side, methods);
  if (key === 'heightM')
    return { value: lead.heightM, low: lead.lowestHeightM, high: lead.highestHeightM, note };
  if (key === 'coefficientBest') {
    return { value: lead.coefficientBest, low: lead.coefficientLow, high: lead.coefficientHigh, note };
  }
  if (key === 'dragAreaM2' && input?.shape.kind === 'measuredArea') {
    const { low, high } = input.shape.dragAreaM2;
    return { value: lead.dragAreaM2, low, high, note };
  }
  return { value: lead[key], note };
}

/** The numbers that the equations of the chain name: the trace's own, the condition's and the diameter. */
function knownOf({ lead, input }: WorkingSide, state: SailingState): KnownSymbols {
  const known = new Map<string, SymbolValue>(Object.entries(conditionSymbols(state)));
  if (lead === null) return known;
  for (const key of memberKeys) {
    const value = lead[key];
    const { symbol, unit } = memberQuantities[key];
    if (value !== null) known.set(symbol, { value, unit });
  }
  known.set('z_w', windHeight(lead.heightM));
  known.set('turn', { value: lead.localAngleFromCourseRad - lead.apparentAngleFromCourseRad, unit: 'rad' });
  for (const [symbol, value] of sizeSymbols(input)) known.set(symbol, { value, unit: 'm' });
  return known;
}

/** The sizes that the equations of a shape name, m. */
function sizeSymbols(input: FittingInput | null): (readonly [symbol: string, valueM: number])[] {
  if (input === null) return [];
  const { shape } = input;
  if ('chord' in shape) {
    return [
      ['c', shape.chord.valueM],
      ['b', shape.thickness.valueM],
    ];
  }
  return 'diameter' in shape ? [['d', shape.diameter.valueM]] : [];
}
