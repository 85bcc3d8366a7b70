import type { DeckLine } from '../../physics/placement/deckLine';
import { fromSi } from '../../units/convert';
import { formatPlain } from '../../units/plain';
import { catalogue, suggestedZoneId } from '../catalogue/catalogue';
import { boatPlaces } from '../catalogue/boatPlaces';
import type { CatalogueEntry } from '../catalogue/catalogueEntry';
import { deckLineOf } from '../core/fittingToPhysics';
import type { Project, ProjectBoat, ProjectFitting, ProjectZone } from '../file/schema';
import { isMember } from '../file/shapeKinds';
import { splitPhoto } from './photoNote';
import { surveyColumns, surveyHead, surveyKeys, type SurveyKey, type SurveyTexts } from './surveyColumns';
import { placeOf } from './surveyPlace';
import { basisOfShape, sizesOf } from './surveyShape';
import { wordForShape } from './surveyWords';
import { writeCsv, type CsvCell } from './writeCsv';

type SurveyCells = Readonly<Record<SurveyKey, CsvCell>>;

/** The fittings as a survey, one row each in the project's order. What a survey cannot say stays in the project file. */
export function surveyCsv(project: Project): string {
  const line = deckLineOf(project.boat);
  const zoneNames = zoneNamesOf(project.zones);
  return csvOf(
    project.fittings.map((fitting) => cellsOf(fitting, zoneNames.get(fitting.zoneId) ?? '', line)),
  );
}

/** An empty survey: the usual items of each zone by name and shape, to be sized, counted and placed, and room for more. */
export function surveyTemplateCsv({ zones, boat }: Pick<Project, 'zones' | 'boat'>): string {
  return csvOf(
    usualItems(zones).flatMap(({ zone, entries }) => [
      ...entries.map((entry) => ({
        ...emptyCells,
        item: entry.name,
        zone: zone.name,
        shape: wordForEntry(entry, boat),
      })),
      ...Array.from({ length: linesToFill }, () => ({ ...emptyCells, zone: zone.name })),
    ]),
  );
}

/** Blank lines under the usual items of a zone. */
export const linesToFill = 3;

/** The usual items of the catalogue under the project's own zones, in the zones' order. */
export function usualItems(
  zones: readonly ProjectZone[],
): readonly { readonly zone: ProjectZone; readonly entries: readonly CatalogueEntry[] }[] {
  return zones.map((zone) => ({
    zone,
    entries: catalogue.filter((entry) => suggestedZoneId(entry.zone, zones) === zone.id),
  }));
}

/** What an item of the catalogue is called on the sheet. */
export function wordForEntry(entry: CatalogueEntry, boat: ProjectBoat): string {
  return wordForShape(entry.shape(boatPlaces(boat)));
}

function zoneNamesOf(zones: readonly ProjectZone[]): ReadonlyMap<string, string> {
  return new Map(zones.map(({ id, name }) => [id, name]));
}

const emptyCells = Object.fromEntries(surveyKeys.map((key) => [key, null])) as Record<SurveyKey, CsvCell>;

function csvOf(rows: readonly SurveyCells[]): string {
  return writeCsv([surveyKeys.map(surveyHead), ...rows.map((cells) => surveyKeys.map((key) => cells[key]))]);
}

function cellsOf(fitting: ProjectFitting, zoneName: string, line: DeckLine): SurveyCells {
  const { shape, placement, name } = fitting;
  const sizes = sizesOf(shape);
  const place = placeOf(placement, line);
  const isBar = isMember(shape);
  return {
    item: name,
    zone: zoneName,
    shape: wordForShape(shape),
    width: written('width', sizes.width),
    length: written('length', isBar ? place.lengthM : sizes.length),
    thickness: written('thickness', sizes.thickness),
    dragArea: written('dragArea', sizes.dragArea),
    aboveDeck: place.aboveDeckM,
    aftOfStem: place.aftOfStemM,
    lastAftOfStem: place.lastAftOfStemM,
    side: place.side,
    lies: isBar ? place.lies : null,
    count: place.count,
    basis: basisOfShape(shape),
    ...splitPhoto(fitting.note),
  };
}

function written(key: SurveyKey, valueSi: number | null): number | null {
  const { unit } = surveyColumns[key];
  return valueSi === null || unit === null ? valueSi : fromSi(valueSi, unit);
}

/** A fitting as the texts of its row, for a comparison with what comes in. */
export function textsOfFitting(fitting: ProjectFitting, zoneName: string, line: DeckLine): SurveyTexts {
  const cells = cellsOf(fitting, zoneName, line);
  const text = (cell: CsvCell): string => (typeof cell === 'number' ? formatPlain(cell) : (cell ?? ''));
  return Object.fromEntries(surveyKeys.map((key) => [key, text(cells[key])])) as SurveyTexts;
}
