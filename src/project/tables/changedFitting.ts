import { deckLineOf } from '../core/fittingToPhysics';
import type { ProjectFitting, ProjectPlacement, ProjectShape } from '../file/schema';
import { isMember } from '../file/shapeKinds';
import { joinPhoto, splitPhoto } from './photoNote';
import type { SurveyKey } from './surveyColumns';
import {
  ownSizes,
  saidPlace,
  shapeOf,
  zoneOf,
  type BuiltFitting,
  type ShapeAnswer,
  type SurveyContext,
} from './surveyFitting';
import { zoneKindOf } from '../survey/zoneStretch';
import { placeOf, tapedFrom, usualLastM } from './surveyPlace';
import { resized, withBasis, type SizeKey, type SurveySizes } from './surveyShape';
import type { SurveyValues } from './surveyValues';

/**
 * A fitting of the project with what a row says anew; what the row does not say, or says as it was, stays as it was, and
 * so a survey that comes back unchanged changes nothing.
 * @param changed the row's columns that are filled and differ.
 */
export function changedFitting(
  fitting: ProjectFitting,
  values: SurveyValues,
  changed: ReadonlySet<SurveyKey>,
  context: SurveyContext,
): BuiltFitting {
  if (changed.size === 0) {
    return { ok: true, fitting, newZoneName: null, assumed: [] };
  }
  const shape = changedShape(fitting.shape, values, changed);
  if ('errors' in shape) return { ok: false, errors: shape.errors };
  const zone = changed.has('zone') ? zoneOf(values, null, context) : null;
  const placement = changedPlacement(fitting, shape.shape, values, changed, context);
  return {
    ok: true,
    fitting: {
      ...fitting,
      shape: shape.shape,
      placement,
      zoneId: zone?.zoneId ?? fitting.zoneId,
      note: changedNote(fitting.note, values, changed),
    },
    newZoneName: zone?.newZoneName ?? null,
    assumed: [],
  };
}

function changedNote(note: string, values: SurveyValues, changed: ReadonlySet<SurveyKey>): string {
  const old = splitPhoto(note);
  return joinPhoto({
    photo: changed.has('photo') ? (values.photo ?? '') : old.photo,
    note: changed.has('note') ? (values.note ?? '') : old.note,
  });
}

const sizeKeys: readonly SizeKey[] = ['width', 'length', 'thickness', 'dragArea'];

function changedShape(
  shape: ProjectShape,
  values: SurveyValues,
  changed: ReadonlySet<SurveyKey>,
): ShapeAnswer {
  if (changed.has('shape')) return shapeOf(values, null);
  const basis = values.basis ?? 'estimated';
  const sizes = ownSizes(values, shape.kind);
  const given = Object.fromEntries(
    sizeKeys.filter((key) => changed.has(key)).map((key) => [key, sizes[key]]),
  ) as Partial<SurveySizes>;
  const isSized = Object.values(given).some((size) => size !== null);
  const rebased = changed.has('basis') ? withBasis(shape, basis) : shape;
  return { shape: isSized ? resized(rebased, given, basis) : rebased, assumed: [] };
}

function changedPlacement(
  { placement, zoneId }: ProjectFitting,
  shape: ProjectShape,
  values: SurveyValues,
  changed: ReadonlySet<SurveyKey>,
  { boat, zones }: SurveyContext,
): ProjectPlacement {
  const isBar = isMember(shape);
  const keys: SurveyKey[] = ['aftOfStem', 'aboveDeck', 'side', 'lastAftOfStem', 'count'];
  if (isBar) keys.push('length', 'lies');
  if (!keys.some((key) => changed.has(key))) return placement;
  const old = placeOf(placement, deckLineOf(boat));
  const place = { ...old, ...saidPlace(values, isBar) };
  const zone = zones.find(({ id }) => id === zoneId);
  const kind = zoneKindOf(zone);
  const lastM = values.lastAftOfStem ?? old.lastAftOfStemM ?? usualLastM(place, kind, boat);
  return tapedFrom(place, lastM, values.basis ?? 'estimated', placement);
}
