import { catalogue, fittingFromCatalogue, suggestedZoneId } from '../catalogue/catalogue';
import { deckLineOf } from '../core/fittingToPhysics';
import { plainLengthM } from '../edit/estimatedSize';
import { blankFitting, noFlags } from '../file/blankParts';
import type {
  Project,
  ProjectBoat,
  ProjectFitting,
  ProjectPlacement,
  ProjectShape,
  ProjectZone,
} from '../file/schema';
import type { ZoneKind } from '../catalogue/catalogueEntry';
import { isMember } from '../file/shapeKinds';
import { joinPhoto } from './photoNote';
import { surveyColumns, type SurveyKey } from './surveyColumns';
import { zoneKindOf } from '../survey/zoneStretch';
import { defaultPlace, placeOf, tapedFrom, usualLastM, type SurveyPlace } from './surveyPlace';
import { isBarKind, neededSizes, resized, shapeFrom, type SizeKey, type SurveySizes } from './surveyShape';
import type { CellErrors, SurveyValues } from './surveyValues';
import { plainWords, surveyShapes, type SurveyShape } from './surveyWords';

/** A row made into a fitting, or what is missing. */
export type BuiltFitting =
  | {
      readonly ok: true;
      /** Its id stands for none in a new one. */
      readonly fitting: ProjectFitting;
      /** The zone to be made for it; null where the project has it. */
      readonly newZoneName: string | null;
      /** What the row left blank and a default stands for, in the columns' words. */
      readonly assumed: readonly string[];
    }
  | { readonly ok: false; readonly errors: CellErrors };

/** A boat with the zones that her rows go to. */
export type SurveyContext = Pick<Project, 'boat' | 'zones'>;

/** Stands for the zone that the import makes; no zone of a project has this id, which the file would refuse. */
const zoneToBe = '';

/**
 * A new fitting from a row. An item that is called as one of the catalogue takes what the row does not say from there
 * (sizes, safety and other flags, exposure); any other takes its place from its zone. All of that is estimated, and the
 * note says what was assumed.
 */
export function newFitting(values: SurveyValues, context: SurveyContext): BuiltFitting {
  const base = catalogueFitting(values, context);
  const zone = zoneOf(values, base, context);
  const shape = shapeOf(values, base);
  if ('errors' in shape) return { ok: false, errors: shape.errors };
  const placement = placementOf(values, base, shape.shape, zone, context);
  const assumed = [...zone.assumed, ...shape.assumed, ...placement.assumed];
  const { exposure, exposureLeeward, dutyFraction, massKg, flags } = base ?? {
    ...blankFitting(nothing),
    flags: { ...noFlags, safetyRequired: keepsPeopleSafe(values.item) },
  };
  const fitting = {
    ...blankFitting({ ...nothing, shape: shape.shape, placement: placement.placement }),
    ...{ exposure, exposureLeeward, dutyFraction, massKg, flags },
    name: values.item,
    zoneId: zone.zoneId,
    note: joinPhoto({ photo: values.photo ?? '', note: withAssumed(values.note ?? '', assumed) }),
  };
  return { ok: true, fitting, newZoneName: zone.newZoneName, assumed };
}

/**
 * What keeps people on board and seen, by its name: no saving on it may count before somebody says why (common practice,
 * no source). A flag too many is taken off with a tick; one too few would go unseen.
 */
const safetyWords =
  /\b(?:stanchions?|guard ?(?:wires?|rails?|lines?)|life ?(?:lines?|rafts?|buoys?)|pulpits?|pushpits?|jack ?(?:stays?|lines?)|hand ?(?:holds?|rails?)|grab ?rails?|nav(?:igation)? lights?)\b/;

function keepsPeopleSafe(item: string): boolean {
  return safetyWords.test(plainWords(item));
}

const nothing = {
  id: 'new',
  name: '',
  zoneId: '',
  shape: { kind: 'roundBar' } as ProjectShape,
  placement: { kind: 'taped' } as ProjectPlacement,
} as const;

/** What a note says already, from a survey before, is not said again. */
function withAssumed(note: string, assumed: readonly string[]): string {
  const said = /Not in the survey, assumed: ([^.]*)\./.exec(note)?.[1]?.split(', ') ?? [];
  const unsaid = assumed.filter((word) => !said.includes(word));
  if (unsaid.length === 0) return note;
  const words = `Not in the survey, assumed: ${unsaid.join(', ')}.`;
  return note === '' ? words : `${note} ${words}`;
}

/** The catalogue's item of the same name, unless the row says that it has another shape. */
function catalogueFitting(
  { item, shape }: SurveyValues,
  { boat, zones }: SurveyContext,
): ProjectFitting | null {
  const wanted = plainWords(item);
  const entry = wanted === '' ? undefined : catalogue.find(({ name }) => plainWords(name) === wanted);
  if (entry === undefined) return null;
  const zoneId = suggestedZoneId(entry.zone, zones) ?? zoneToBe;
  const fitting = fittingFromCatalogue(entry.id, boat, zoneId, 'new');
  return shape === null || isSameShape(shape, fitting.shape) ? fitting : null;
}

function isSameShape({ kind, construction }: SurveyShape, shape: ProjectShape): boolean {
  return kind === shape.kind && (shape.kind !== 'wire' || construction === shape.construction);
}

interface ZoneChoice {
  readonly zoneId: string;
  readonly zone: Pick<ProjectZone, 'id' | 'name'>;
  readonly newZoneName: string | null;
  readonly assumed: readonly string[];
}

/** The zone of that name or id; a name that the project has not is a zone to be made. */
export function zoneOf(
  values: SurveyValues,
  base: ProjectFitting | null,
  { zones }: SurveyContext,
): ZoneChoice {
  const folded = (text: string): string => text.normalize('NFC').trim().toLowerCase();
  const wanted = values.zone;
  if (wanted !== null) {
    const zone =
      zones.find(({ name }) => folded(name) === folded(wanted)) ??
      zones.find(({ id }) => id === wanted.trim());
    if (zone !== undefined) return { zoneId: zone.id, zone, newZoneName: null, assumed: [] };
    return {
      zoneId: zoneToBe,
      zone: { id: zoneToBe, name: wanted },
      newZoneName: wanted.trim(),
      assumed: [],
    };
  }
  const zone = zones.find(({ id }) => id === base?.zoneId) ?? zones[0];
  const assumed = ['zone'];
  if (zone !== undefined) return { zoneId: zone.id, zone, newZoneName: null, assumed };
  return { zoneId: zoneToBe, zone: { id: zoneToBe, name: 'Deck' }, newZoneName: 'Deck', assumed };
}

export type ShapeAnswer =
  { readonly shape: ProjectShape; readonly assumed: readonly string[] } | { readonly errors: CellErrors };

export function shapeOf(values: SurveyValues, base: ProjectFitting | null): ShapeAnswer {
  const basis = values.basis ?? 'estimated';
  const sizes = ownSizes(values, values.shape?.kind ?? base?.shape.kind);
  if (base !== null) {
    const missing = neededSizes[base.shape.kind].filter((key) => sizes[key] === null);
    return { shape: resized(base.shape, sizes, basis), assumed: missing.map(labelOf) };
  }
  const { shape } = values;
  if (shape === null) {
    const words = surveyShapes.map(({ word }) => word).join(', ');
    return { errors: { shape: `Say what it is: ${words}.` } };
  }
  const made = shapeFrom(shape, sizes, basis, standsOnDeck(values));
  if (made !== null) return { shape: made, assumed: made.kind === 'net' ? netAssumed(sizes) : [] };
  const missing = neededSizes[shape.kind].filter((key) => sizes[key] === null);
  return {
    errors: Object.fromEntries(
      missing.map((key) => [key, `A ${shape.word} needs its ${sizeWord(shape, key)}.`]),
    ),
  };
}

function netAssumed({ thickness }: SurveySizes): readonly string[] {
  return thickness === null ? ['solidity', 'twine'] : ['solidity'];
}

/** A bar's length belongs to its place, not to its shape. */
export function ownSizes(values: SurveyValues, kind: ProjectShape['kind'] | undefined): SurveySizes {
  const { width, length, thickness, dragArea } = values;
  const isBar = kind !== undefined && isBarKind(kind);
  return { width, length: isBar ? null : length, thickness, dragArea };
}

/** Upright and with its foot at the deck, as far as a tape tells. */
function standsOnDeck({ lies, aboveDeck }: SurveyValues): boolean {
  return (lies === null || lies === 'upright') && aboveDeck !== null && Math.abs(aboveDeck) <= 0.05;
}

function labelOf(key: SurveyKey): string {
  return surveyColumns[key].label.toLowerCase();
}

function sizeWord({ kind }: SurveyShape, key: SizeKey): string {
  if (key === 'width' && (kind === 'roundBar' || kind === 'wire' || kind === 'sphere')) return 'diameter';
  if (key === 'width' && isBarKind(kind)) return 'width (along the chord)';
  if (key === 'thickness' && kind === 'bluffBody') return 'height, as thickness';
  if (key === 'length' && kind === 'net') return 'height, as length';
  return labelOf(key);
}

const placeKeys = ['aftOfStem', 'aboveDeck', 'side', 'lies', 'lastAftOfStem'] as const;

interface PlaceAnswer {
  readonly placement: ProjectPlacement;
  readonly assumed: readonly string[];
}

function placementOf(
  values: SurveyValues,
  base: ProjectFitting | null,
  shape: ProjectShape,
  { zone }: ZoneChoice,
  { boat }: SurveyContext,
): PlaceAnswer {
  const isBar = isMember(shape);
  const isSaid = placeKeys.some((key) => values[key] !== null) || (isBar && values.length !== null);
  const asInCatalogue = base === null || isSaid ? null : recounted(base.placement, values.count);
  if (asInCatalogue !== null) return { placement: asInCatalogue, assumed: ['place'] };
  const kind = zoneKindOf(zone);
  const usual: SurveyPlace =
    base === null
      ? { ...defaultPlace(kind, boat, values.count ?? 1), lengthM: isBar ? plainLengthM : 0 }
      : placeOf(base.placement, deckLineOf(boat));
  const place = { ...usual, ...saidPlace(values, isBar) };
  const row = rowOf(place, values, usual, kind, boat);
  const assumed = [...missingPlace(values, isBar), ...row.assumed];
  const basis = assumed.length === 0 ? (values.basis ?? 'estimated') : 'estimated';
  return { placement: tapedFrom(place, row.lastM, basis, base?.placement ?? null), assumed };
}

/** The catalogue's own placement with the row's count; null where it cannot hold that. */
function recounted(placement: ProjectPlacement, count: number | null): ProjectPlacement | null {
  if (count === null || count === (placement.row?.count ?? 1)) return placement;
  if (placement.row === null || count < 2) return null;
  return { ...placement, row: { ...placement.row, count } } as ProjectPlacement;
}

/** What a row says of the place. */
export function saidPlace(values: SurveyValues, isBar: boolean): Partial<SurveyPlace> {
  const { aftOfStem, aboveDeck, side, lies, length, count } = values;
  return {
    ...(aftOfStem === null ? {} : { aftOfStemM: aftOfStem }),
    ...(aboveDeck === null ? {} : { aboveDeckM: aboveDeck }),
    ...(side === null ? {} : { side }),
    ...(lies === null || !isBar ? {} : { lies }),
    ...(length === null || !isBar ? {} : { lengthM: length }),
    ...(count === null ? {} : { count }),
  };
}

/** Where the last of a row stands: as taped, else as usual. */
function rowOf(
  place: SurveyPlace,
  { lastAftOfStem, aftOfStem }: SurveyValues,
  usual: SurveyPlace,
  kind: ZoneKind,
  boat: ProjectBoat,
): { readonly lastM: number; readonly assumed: readonly string[] } {
  if (place.count < 2 || lastAftOfStem !== null) return { lastM: lastAftOfStem ?? 0, assumed: [] };
  const assumed = [labelOf('lastAftOfStem')];
  const isAsUsual = aftOfStem === null && usual.lastAftOfStemM !== null;
  return { lastM: isAsUsual ? usual.lastAftOfStemM : usualLastM(place, kind, boat), assumed };
}

function missingPlace(values: SurveyValues, isBar: boolean): readonly string[] {
  const keys: SurveyKey[] = ['aftOfStem', 'aboveDeck', 'side'];
  if (isBar) keys.push('length', 'lies');
  return keys
    .filter((key) => values[key] === null)
    .map((key) => (key === 'lies' ? 'how it lies' : labelOf(key)));
}
