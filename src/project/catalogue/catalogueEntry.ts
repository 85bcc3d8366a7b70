import type { ProjectExposure, ProjectFitting } from '../file/schema';
import type { BoatPlaces } from './boatPlaces';
import { noSource } from './shapes';

/** The stretches of a boat by which a ledger is grouped. */
export const zoneKinds = ['bow', 'decks', 'cockpit', 'stern', 'rig', 'masthead', 'crew', 'hull'] as const;

export type ZoneKind = (typeof zoneKinds)[number];

/** The heads of the catalogue's list, in its order. */
export const catalogueGroups = [
  'Bow',
  'Side decks',
  'Cockpit and coachroof',
  'Stern',
  'Safety gear',
  'Mast and boom',
  'Standing rigging',
  'Running rigging',
  'Sails, rolled or stowed',
  'Masthead',
  'Aerials, lights and power',
  'Crew',
  'Hull and foils',
] as const;

export type CatalogueGroup = (typeof catalogueGroups)[number];

/** What the catalogue sets beyond shape and place. */
type Extras = Partial<
  Pick<ProjectFitting, 'exposure' | 'exposureLeeward' | 'dutyFraction' | 'massKg'> & {
    readonly flags: Partial<ProjectFitting['flags']>;
  }
>;

/** A typical fitting with sizes of common practice, laid out on whatever boat it is added to. */
export interface CatalogueEntry extends Extras {
  readonly id: string;
  readonly name: string;
  /** Other words by which people look for it. */
  readonly synonyms: string;
  readonly group: CatalogueGroup;
  readonly zone: ZoneKind;
  /** What to know about this one; the catalogue adds where its sizes come from. */
  readonly note: string;
  readonly shape: (places: BoatPlaces) => ProjectFitting['shape'];
  readonly placement: (places: BoatPlaces) => ProjectFitting['placement'];
}

function slowed(best: number, low: number, high: number, why: string): ProjectExposure {
  return { best, low, high, source: `${why}: ${noSource}` };
}

/** Low on deck the air is slowed by the deck itself. */
export const onDeckExposure = slowed(0.7, 0.5, 0.85, 'In the boundary layer of the deck');

/** Flat on the deck. */
export const flatOnDeckExposure = slowed(0.6, 0.4, 0.8, 'Flat in the boundary layer of the deck');

/** Behind the coachroof and below the coamings. */
export const inCockpitExposure = slowed(0.75, 0.6, 0.9, 'Behind the coachroof');

/** Each close behind the next. */
export const inRowExposure = slowed(0.88, 0.75, 1, 'Each sits close behind the next');

/** Beside the mast, where the air is slowed and turned. */
export const atMastExposure = slowed(0.9, 0.75, 1.1, 'Close to the mast');

/** The leeward one stands behind the sails. */
export const behindSailExposure = slowed(0.8, 0.65, 1, 'In the lee of the headsail');

export const safety = { safetyRequired: true } as const;
export const structural = { structural: true } as const;
export const moving = { movingPart: true } as const;
