import { namedBodies } from '../../physics/body/namedBodies';
import { quantityIn, valueIn } from '../../units/printIn';
import { barBetween, boatPlaces, onCentre, standingAt, type BoatPlaces } from '../catalogue/boatPlaces';
import { noSource } from '../catalogue/shapes';
import { estimated } from '../edit/estimatedSize';
import { blankFitting, point } from '../file/blankParts';
import type {
  ProjectBoat,
  ProjectFitting,
  ProjectPlacement,
  ProjectRanged,
  ProjectShape,
} from '../file/schema';
import { shapeFacts } from './envelopeShapes';
import type { EnvelopeShapeId } from './envelopeTexts';
import { shapeLabel } from './handbook';
import { endsAs, endsWhenUnsaid, missingSizes, plateThicknessShare } from './handbookShape';
import type { EnvelopeNumbers } from './readEnvelope';
import { areaOfOneM2, countOf } from './workOutArea';
import { workOut } from './workOut';

/** A fitting for `addFitting`, or what is missing for one. */
export type FittingAnswer =
  | { readonly ok: true; readonly parts: Omit<ProjectFitting, 'id'> }
  | { readonly ok: false; readonly message: string };

/** An envelope's drag area is doubted by this much to each side (common practice, no source). */
const dragAreaDoubt = 0.25;
/** A row stands along the centreline between these fractions of the length; one alone stands amidships. */
const rowFrom = 0.3;
const rowTo = 0.7;
const bodyAboveDeckM = 1;

/** The fitting's shape with the ledger's own coefficients, and its height; null when the numbers do not make one. */
interface Made {
  readonly shape: ProjectShape;
  readonly heightM: number;
  readonly isBar: boolean;
}

/**
 * Makes an estimate a fitting of the ledger: its shape and sizes as estimates, with the ledger's own coefficients, or else
 * its drag area. Where it stands is a guess (a row along the centreline, amidships) and is said to be one.
 */
export function fittingFromEnvelope(
  numbers: EnvelopeNumbers,
  boat: ProjectBoat,
  zoneId: string,
): FittingAnswer {
  const made = shapeFrom(numbers) ?? dragAreaFrom(numbers);
  if (made === null) return { ok: false, message: missingText(numbers) };
  const parts = blankFitting({
    id: 'new',
    name: nameOf(numbers),
    zoneId,
    note: noteOf(numbers),
    shape: made.shape,
    placement: placementOf(boatPlaces(boat), made, countOf(numbers)),
  });
  return { ok: true, parts };
}

function missingText(numbers: EnvelopeNumbers): string {
  const { shape } = numbers;
  const wanted = shape === null ? null : missingSizes(numbers, shape);
  return wanted === null
    ? 'For a fitting type a shape with its sizes, or what gives a drag area: coefficient and area, or force and speed.'
    : `For a fitting type ${wanted}.`;
}

const memberParts = { coefficient: null, friction: 'model' } as const;

function shapeFrom(numbers: EnvelopeNumbers): Made | null {
  const { shape } = numbers;
  if (shape === null || missingSizes(numbers, shape) !== null) return null;
  const { family } = shapeFacts[shape];
  const widthM = numbers.width?.valueSi ?? NaN;
  const heightM = numbers.length?.valueSi ?? 0;
  const ends = endsAs[numbers.ends ?? endsWhenUnsaid];
  const diameter = estimated(widthM);
  const surface = { kind: 'smooth' } as const;
  switch (family.kind) {
    case 'roundBar':
      return { isBar: true, heightM, shape: { kind: 'roundBar', diameter, surface, ends, ...memberParts } };
    case 'wire': {
      const { construction } = family;
      return { isBar: true, heightM, shape: { kind: 'wire', construction, diameter, ...memberParts } };
    }
    case 'sphere':
      return { isBar: false, heightM: 0, shape: { kind: 'sphere', diameter, surface, coefficient: null } };
    case 'plate': {
      // The longer side is the member, as in the check.
      const [shortM, longM] = [Math.min(widthM, heightM), Math.max(widthM, heightM)];
      const depthM = numbers.depth?.valueSi ?? plateThicknessShare * shortM;
      return { isBar: true, heightM: longM, shape: rectangle(shortM, depthM, ends) };
    }
    case 'rectangularBar':
      return { isBar: true, heightM, shape: rectangle(widthM, numbers.depth?.valueSi ?? widthM, ends) };
    case 'named':
      return namedFrom(numbers, shape);
  }
}

function rectangle(widthM: number, depthM: number, ends: (typeof endsAs)['free']): ProjectShape {
  return {
    kind: 'rectangularBar',
    chord: estimated(Math.max(widthM, depthM)),
    thickness: estimated(Math.min(widthM, depthM)),
    cornerRadiusM: 0,
    direction: { kind: 'fixed', angleDeg: widthM >= depthM ? 90 : 0 },
    ends,
    ...memberParts,
  };
}

/** A coefficient that goes by name, on the area of one. */
function namedFrom(numbers: EnvelopeNumbers, shape: EnvelopeShapeId): Made | null {
  const { family } = shapeFacts[shape];
  const areaM2 = areaOfOneM2(numbers) ?? typedAreaOfOneM2(numbers);
  if (family.kind !== 'named' || areaM2 === null) return null;
  const { coefficient, label } = namedBodies[family.id];
  const { best, low, high } = coefficient;
  return areaMade(
    { best: best * areaM2, low: low * areaM2, high: high * areaM2 },
    `${label}, coefficient ${valueIn(best, '1', { decimals: 2 })} by its name`,
  );
}

function typedAreaOfOneM2(numbers: EnvelopeNumbers): number | null {
  const all = workOut(numbers).area.usable[0];
  return all === undefined ? null : all.valueSi / countOf(numbers);
}

function dragAreaFrom(numbers: EnvelopeNumbers): Made | null {
  const all = workOut(numbers).dragArea.usable[0];
  if (all === undefined) return null;
  const one = all.valueSi / countOf(numbers);
  return areaMade(
    { best: one, low: one * (1 - dragAreaDoubt), high: one * (1 + dragAreaDoubt) },
    `From an envelope, give or take 25 %: ${noSource}`,
  );
}

function areaMade({ best, low, high }: ProjectRanged, source: string): Made | null {
  const rounded = (areaM2: number): number => Number(areaM2.toPrecision(4));
  if (!(high < 10_000)) return null;
  return {
    isBar: false,
    heightM: 0,
    shape: {
      kind: 'measuredArea',
      dragAreaM2: { best: rounded(best), low: rounded(low), high: rounded(high) },
      provenance: { kind: 'estimate', source },
      pullTest: null,
    },
  };
}

function nameOf({ shape, count, width, length }: EnvelopeNumbers): string {
  if (shape === null) return 'From an envelope';
  const [kind = ''] = shapeLabel(shape).split(/[:,(]/);
  const sizes = [width, length].flatMap((size) =>
    size === null ? [] : [quantityIn(size.valueSi, size.unit)],
  );
  const many = count === null ? '' : `${valueIn(count.valueSi, '1', { decimals: 0 })} × `;
  return `${many}${kind.trim()} ${sizes.join(' × ')}`.trim();
}

function noteOf({ coefficient, speed, force, power }: EnvelopeNumbers): string {
  const written = [
    coefficient === null ? [] : [`Cd ${valueIn(coefficient.valueSi, '1', { decimals: 2 })}`],
    [speed, force, power].flatMap((one) => (one === null ? [] : [quantityIn(one.valueSi, one.unit)])),
  ].flat();
  const said = written.length === 0 ? '' : ` It said: ${written.join(', ')}.`;
  return `From an envelope check.${said} Where it stands is a guess: put it in its place.`;
}

function placementOf(places: BoatPlaces, { heightM, isBar }: Made, count: number): ProjectPlacement {
  const at = (fraction: number) => onCentre(places, fraction, isBar ? 0 : bodyAboveDeckM);
  const first = at(count === 1 ? 0.5 : rowFrom);
  const last = at(rowTo);
  if (!isBar) return standingAt(first, { count, last });
  const upFrom = (foot: typeof first) => [foot, point(foot.xM, foot.yM, foot.zM + heightM)] as const;
  return barBetween(upFrom(first), { row: { count, last: upFrom(last) } });
}
