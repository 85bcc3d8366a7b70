import { namedBodies } from '../../physics/body/namedBodies';
import type { Ranged } from '../../physics/fitting/fittingInput';
import { dynamicPressurePa } from '../../physics/envelope/envelopeArithmetic';
import { sources, type SourceId } from '../../physics/sources';
import { quantityIn, valueIn } from '../../units/printIn';
import { noticeText } from '../wording/noticeText';
import type { EnvelopeHandbook } from './envelopeCheck';
import { envelopeAir, isAir } from './envelopeAir';
import { shapeFacts } from './envelopeShapes';
import { envelopeOptions, type EnvelopeShapeId } from './envelopeTexts';
import { handbookDrag, type HandbookDrag } from './handbookDrag';
import { missingSizes } from './handbookShape';
import { coefficientText, forceText, offRange, powerText, reynoldsText, verdictOf } from './handbookWords';
import type { EnvelopeNumbers } from './readEnvelope';
import { areaOfOneM2, countOf } from './workOutArea';
import type { WorkedEnvelope } from './workOut';

export type HandbookAnswer =
  | { readonly handbook: EnvelopeHandbook; readonly missing: null }
  | { readonly handbook: null; readonly missing: string };

function missing(text: string): HandbookAnswer {
  return { handbook: null, missing: text };
}

export function shapeLabel(shape: EnvelopeShapeId): string {
  return envelopeOptions.shape.find(({ id }) => id === shape)?.label ?? shape;
}

/** What a handbook uses for the shape in the wind that is met, or what to type for that. */
export function handbookOf(numbers: EnvelopeNumbers, envelope: WorkedEnvelope): HandbookAnswer {
  const { shape } = numbers;
  const speedMs = envelope.speed.usable[0]?.valueSi;
  if (shape === null) return missing('Choose the shape, and a handbook’s coefficient stands beside yours.');
  if (!isAir(numbers))
    return missing('The density is not that of air near the sea: no handbook value is given.');
  const wanted = missingSizes(numbers, shape);
  if (wanted !== null) return missing(`For a handbook’s value type ${wanted}.`);
  if (speedMs === undefined) return missing('For a handbook’s value type the wind speed.');
  if (!(speedMs > 0)) return missing('Without wind there is nothing to look up.');
  const areaM2 = handbookAreaM2(numbers, envelope);
  if (areaM2 === null) return missing('For a handbook’s force type the sizes or the area.');
  const drag = handbookDrag(numbers, shape, speedMs, envelopeAir(numbers));
  return drag === null
    ? missing('For a handbook’s value type the sizes.')
    : { handbook: built(numbers, envelope, shape, drag, areaM2, speedMs), missing: null };
}

/** The area of all of them: from the sizes where they are written, because those are what the shape has. */
export function handbookAreaM2(numbers: EnvelopeNumbers, envelope: WorkedEnvelope): number | null {
  const one = areaOfOneM2(numbers);
  return one === null ? (envelope.area.usable[0]?.valueSi ?? null) : one * countOf(numbers);
}

export function scaledRange({ best, low, high }: Ranged, factor: number): Ranged {
  const ends = [low * factor, high * factor] as const;
  return { best: best * factor, low: Math.min(...ends), high: Math.max(...ends) };
}

function ratio(written: number | undefined, best: number): number | null {
  return written === undefined ? null : written / best;
}

/** The coefficient as written, or as the written claims imply. */
function coefficientOf(
  envelope: WorkedEnvelope,
): { readonly value: number; readonly isImplied: boolean } | null {
  const { coefficient } = envelope;
  const [first] = coefficient.usable;
  return first === undefined ? null : { value: first.valueSi, isImplied: coefficient.written === null };
}

function built(
  numbers: EnvelopeNumbers,
  envelope: WorkedEnvelope,
  shape: EnvelopeShapeId,
  drag: HandbookDrag,
  areaM2: number,
  speedMs: number,
): EnvelopeHandbook {
  const pressure = dynamicPressurePa(envelopeAir(numbers).densityKgM3, speedMs);
  const forceN = scaledRange(drag.coefficient, pressure * areaM2);
  const airPowerW = scaledRange(forceN, speedMs);
  const written = coefficientOf(envelope);
  const isAirPower = numbers.powerKind !== 'track';
  const power = numbers.power ?? numbers.horsepower;
  const { areaBase } = shapeFacts[shape];
  return {
    shapeLabel: shapeLabel(shape),
    reynolds: drag.reynolds,
    regime: drag.regime,
    sectionCoefficient: drag.sectionCoefficient,
    endFactorDnv: drag.endFactorDnv,
    endFactorEn: drag.endFactorEn,
    coefficient: drag.coefficient,
    areaBase,
    areaM2,
    forceN,
    airPowerW,
    coefficientRatio: ratio(written?.value, drag.coefficient.best),
    forceRatio: ratio(numbers.force?.valueSi, forceN.best),
    powerRatio: ratio(isAirPower ? power?.valueSi : undefined, airPowerW.best),
    verdict: written === null ? null : verdictOf(written.value, written.isImplied, drag.coefficient),
    sentences: [
      coefficientSentence(shape, drag),
      ...endSentences(numbers, drag),
      ...crisisSentences(shape, drag, written?.value ?? null),
      answerSentence(forceN, airPowerW),
      ...movedSentences(envelope, forceN, airPowerW, isAirPower),
    ],
    notices: noticesFor(shape, drag),
    sources: sourcesFor(shape, drag).map((id) => sources[id].title),
  };
}

function coefficientSentence(shape: EnvelopeShapeId, { reynolds, sectionCoefficient }: HandbookDrag): string {
  const at = reynolds === null ? '' : ` at a Reynolds number of ${reynoldsText(reynolds)}`;
  const { area, areaBase } = shapeFacts[shape];
  const long = area === 'widthTimesLength' ? ', infinitely long' : '';
  const label = shapeLabel(shape);
  return `${label.charAt(0).toUpperCase()}${label.slice(1)}${at}${long}: Cd ${coefficientText(sectionCoefficient)} on ${areaBase}.`;
}

function endSentences(
  { ends }: EnvelopeNumbers,
  { endFactorDnv, endFactorEn, coefficient }: HandbookDrag,
): string[] {
  if (endFactorDnv === null || endFactorEn === null) return [];
  const factor = (value: number): string => valueIn(value, '1', { decimals: 2 });
  const which = ends === 'oneOnSurface' ? 'one end on a surface, the other free' : 'both ends free';
  return [
    `Finite length, ${which}: times ${factor(endFactorDnv)} by DNV-RP-C205 and ${factor(endFactorEn)} by EN 1991-1-4, so Cd ${coefficientText(coefficient)}.`,
  ];
}

/** A coefficient of 0.5 or so for a bar that has not reached the drag crisis. */
function crisisSentences(
  shape: EnvelopeShapeId,
  { reynolds, regime }: HandbookDrag,
  written: number | null,
): string[] {
  const isBar = shape === 'roundBar' || shape === 'rod';
  const isBelow = reynolds !== null && (regime === 'plateau' || regime === 'dip');
  if (!isBar || !isBelow || written === null || written < 0.25 || written > 0.7) return [];
  return [
    `Cd ${valueIn(written, '1', { decimals: 2 })} is a sphere’s, or a tube’s beyond the drag crisis, at Reynolds numbers from about 300 000; this one is at ${reynoldsText(reynolds)}, below it.`,
  ];
}

function answerSentence(forceN: Ranged, airPowerW: Ranged): string {
  return `With that the force is ${forceText(forceN)} and the air power ${powerText(airPowerW)}.`;
}

function movedSentences(
  { force, power, horsepower }: WorkedEnvelope,
  forceN: Ranged,
  airPowerW: Ranged,
  isAirPower: boolean,
): string[] {
  const claims = [
    { name: 'force', written: force.written, range: forceN },
    ...(isAirPower
      ? [
          { name: 'power', written: power.written, range: airPowerW },
          { name: 'horsepower', written: horsepower.written, range: airPowerW },
        ]
      : []),
  ];
  return claims.flatMap(({ name, written, range }) =>
    written === null || written.valueSi <= 0
      ? []
      : [
          `The ${name} as written, ${quantityIn(written.valueSi, written.unit)}, is ${offRange(written.valueSi, range)}: the handbook gives ${quantityIn(range.best, written.unit)}.`,
        ],
  );
}

function noticesFor(shape: EnvelopeShapeId, { notices }: HandbookDrag): string[] {
  const { family, area } = shapeFacts[shape];
  const long =
    family.kind === 'named' && area === 'widthTimesLength'
      ? ['The value is that of a long bar; ends in open air lower it, which is not counted here.']
      : [];
  const range =
    family.kind === 'named'
      ? ['The value goes by the shape’s name alone: it is not followed over the Reynolds number.']
      : [];
  return [...notices.map(noticeText), ...range, ...long];
}

const ends: readonly SourceId[] = ['dnv-rp-c205', 'en-1991-1-4'];

function sourcesFor(shape: EnvelopeShapeId, { endFactorDnv }: HandbookDrag): readonly SourceId[] {
  const { family } = shapeFacts[shape];
  const finite = endFactorDnv === null ? [] : ends;
  switch (family.kind) {
    case 'roundBar':
      return ['round-bar-table', ...finite];
    case 'wire':
      return family.construction === 'rod' ? ['round-bar-table'] : ['hoerner-cables', 'rope-design-values'];
    case 'sphere':
      return ['sphere-curves', 'achenbach-1972'];
    case 'plate':
    case 'rectangularBar':
      return ['en-rectangles', ...(endFactorDnv === null ? [] : (['dnv-plate', 'en-1991-1-4'] as const))];
    case 'named':
      return [namedBodies[family.id].source];
  }
}
