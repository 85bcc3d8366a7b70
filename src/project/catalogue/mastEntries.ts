import {
  atEdge,
  atMast,
  barBetween,
  countAlong,
  mastFraction,
  mastLengthM,
  onCentre,
  standingAt,
  type BoatPlaces,
} from './boatPlaces';
import { atMastExposure, moving, safety, structural, type CatalogueEntry } from './catalogueEntry';
import {
  body,
  boxBar,
  clothBundle,
  dragArea,
  drum,
  oval,
  paintedTube,
  rod,
  roundedBox,
  sectionBar,
  tube,
} from './shapes';

/** The boom's length, as a fraction of the boat's, and its height above the deck, m. */
export const boomFraction = 0.38;

export function boomHeightM({ lengthM }: BoatPlaces): number {
  return Math.min(0.9 + 0.06 * lengthM, 2.4);
}

/** A mast's thickness across, m: one in 125 of its length. */
export function mastThicknessM(boat: BoatPlaces): number {
  return mastLengthM(boat) / 125;
}

/** Mast, boom and masthead. */
export const mastEntries: readonly CatalogueEntry[] = [
  {
    id: 'mast-under-sail',
    name: 'Mast tube, mainsail set',
    synonyms: 'spar mast under sails',
    group: 'Mast and boom',
    zone: 'rig',
    note: 'What the tube costs depends on the sail behind it; the wide range says so, until sections and sails have families.',
    flags: structural,
    shape: (boat) =>
      sectionBar(mastThicknessM(boat), [0.55, 0.25, 0.95], 'Oval tube with a sail in its wake', [
        'surface',
        'free',
      ]),
    placement: (boat) => barBetween([atMast(boat, 0, 0, 0), atMast(boat, 1, 0, 0)]),
  },
  {
    id: 'mast-bare',
    name: 'Mast tube, no mainsail',
    synonyms: 'spar bare pole mast motoring storm',
    group: 'Mast and boom',
    zone: 'rig',
    note: 'A round tube as thick as the mast is across; a section with a direction comes later.',
    flags: structural,
    shape: (boat) => paintedTube(mastThicknessM(boat), ['surface', 'free']),
    placement: (boat) => barBetween([atMast(boat, 0, 0, 0), atMast(boat, 1, 0, 0)]),
  },
  {
    id: 'boom',
    name: 'Boom',
    synonyms: 'spar mainsail foot',
    group: 'Mast and boom',
    zone: 'rig',
    note: 'Sheeted in: a box, deeper than wide, with rounded corners.',
    flags: structural,
    shape: ({ lengthM }) => boxBar(0.016 * lengthM, 0.01 * lengthM, ['joined', 'free']),
    placement: (boat) => {
      const aft = mastFraction(boat) + 0.01;
      const height = boomHeightM(boat);
      return barBetween([onCentre(boat, aft, height), onCentre(boat, aft + boomFraction, height + 0.15)]);
    },
  },
  {
    id: 'boom-vang',
    name: 'Vang',
    synonyms: 'kicker kicking strap strut boom',
    group: 'Mast and boom',
    zone: 'rig',
    note: 'A strut with its tackle or cylinder.',
    flags: moving,
    shape: ({ lengthM }) => paintedTube(0.005 * lengthM, ['joined', 'joined']),
    placement: (boat) => {
      const aft = mastFraction(boat);
      return barBetween([onCentre(boat, aft + 0.01, 0.2), onCentre(boat, aft + 0.12, boomHeightM(boat))]);
    },
  },
  {
    id: 'mainsail-on-boom',
    name: 'Mainsail stowed on the boom',
    synonyms: 'stack pack lazy bag sail cover flaked',
    group: 'Sails, rolled or stowed',
    zone: 'rig',
    note: 'Lowered; with the mainsail set, its bag is a third of this.',
    shape: ({ lengthM }) => body([0.36 * lengthM, 0.3, 0.045 * lengthM], clothBundle),
    placement: (boat) => standingAt(onCentre(boat, mastFraction(boat) + 0.2, boomHeightM(boat) + 0.1)),
  },
  {
    id: 'spreaders',
    name: 'Spreaders',
    synonyms: 'crosstrees spar struts',
    group: 'Standing rigging',
    zone: 'rig',
    note: 'Two pairs; three on a tall rig. An oval, three times as long as thick, with its nose forward.',
    flags: structural,
    shape: ({ lengthM }) => oval(0.0114 * lengthM, 0.0038 * lengthM, ['joined', 'joined']),
    placement: (boat) => {
      const outM = 0.08 * boat.lengthM + 0.1;
      return barBetween([atMast(boat, 0.33, 0, 0.05), atMast(boat, 0.34, 0.03 * boat.lengthM, outM)], {
        row: {
          count: mastLengthM(boat) > 20 ? 3 : 2,
          last: [atMast(boat, 0.66, 0, 0.05), atMast(boat, 0.67, 0.02 * boat.lengthM, 0.75 * outM)],
        },
        pair: true,
      });
    },
  },
  {
    id: 'mast-steps',
    name: 'Mast steps',
    synonyms: 'climbing rungs',
    group: 'Mast and boom',
    zone: 'rig',
    note: 'Every 0.45 m, on both sides in turn.',
    exposure: atMastExposure,
    shape: () => dragArea([0.006, 0.004, 0.009], 'Strip of 150 mm x 35 mm, seen at an angle'),
    placement: (boat) =>
      standingAt(atMast(boat, 0.06, 0, 0.1), {
        count: countAlong(0.9 * mastLengthM(boat), 0.45),
        last: atMast(boat, 0.97, 0, 0.1),
      }),
  },
  {
    id: 'mast-winches',
    name: 'Mast winches',
    synonyms: 'halyard winch drum',
    group: 'Mast and boom',
    zone: 'rig',
    note: '',
    flags: moving,
    exposure: atMastExposure,
    shape: ({ lengthM }) => body([0.012 * lengthM, 0.015 * lengthM, 0.012 * lengthM], drum),
    placement: (boat) => standingAt(atMast(boat, 0.06, 0, mastThicknessM(boat)), { pair: true }),
  },
  {
    id: 'radar-on-mast',
    name: 'Radar on the mast',
    synonyms: 'radome dome scanner aerial',
    group: 'Aerials, lights and power',
    zone: 'rig',
    note: 'With its bracket.',
    shape: () => body([0.5, 0.5, 0.25], drum),
    placement: (boat) => standingAt(atMast(boat, 0.4, -0.4, 0)),
  },
  {
    id: 'steaming-light',
    name: 'Steaming and deck light',
    synonyms: 'navigation lantern motor',
    group: 'Aerials, lights and power',
    zone: 'rig',
    note: '',
    flags: safety,
    exposure: atMastExposure,
    shape: () => dragArea([0.009, 0.006, 0.013], 'Lantern of 90 mm x 120 mm with a coefficient of 0.8'),
    placement: (boat) => standingAt(atMast(boat, 0.55, -0.15, 0)),
  },
  {
    id: 'radar-reflector',
    name: 'Radar reflector',
    synonyms: 'octahedral tube ball',
    group: 'Safety gear',
    zone: 'rig',
    note: 'A tube of 100 mm on the mast.',
    flags: safety,
    shape: () => tube(0.1, ['free', 'free']),
    placement: (boat) => barBetween([atMast(boat, 0.62, -0.15, 0), upBy(atMast(boat, 0.62, -0.15, 0), 0.6)]),
  },
  {
    id: 'mast-instruments',
    name: 'Instrument displays at the mast',
    synonyms: 'jumbo screens bracket electronics',
    group: 'Cockpit and coachroof',
    zone: 'rig',
    note: '',
    exposure: atMastExposure,
    shape: () => body([0.08, 0.28, 0.7], roundedBox),
    placement: (boat) => standingAt(atMast(boat, 0.06, 0.15, 0)),
  },
  {
    id: 'masthead-crane',
    name: 'Masthead crane',
    synonyms: 'unit halyard sheaves top',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    flags: structural,
    shape: ({ lengthM }) => body([0.03 * lengthM, 0.008 * lengthM, 0.011 * lengthM]),
    placement: (boat) => standingAt(atMast(boat, 1, 0.1, 0)),
  },
  {
    id: 'wind-sensor-wand',
    name: 'Wind sensor wand',
    synonyms: 'masthead unit anemometer instrument vane',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    shape: () => paintedTube(0.017, ['joined', 'free']),
    placement: (boat) => barBetween([atMast(boat, 1, 0, 0.05), upBy(atMast(boat, 1, -0.6, 0.05), 0.85)]),
  },
  {
    id: 'wind-sensor-head',
    name: 'Wind sensor cups and vane',
    synonyms: 'masthead unit anemometer instrument',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    flags: moving,
    shape: () => dragArea([0.005, 0.003, 0.008], 'Three cups of 50 mm and a vane'),
    placement: (boat) => standingAt(upBy(atMast(boat, 1, -0.6, 0.05), 0.9)),
  },
  {
    id: 'masthead-aerial',
    name: 'Masthead aerial',
    synonyms: 'vhf whip antenna radio',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    shape: () => paintedTube(0.0065, ['joined', 'free']),
    placement: (boat) => barBetween([atMast(boat, 1, 0.1, -0.08), upBy(atMast(boat, 1, 0.1, -0.08), 0.95)]),
  },
  {
    id: 'masthead-light',
    name: 'Masthead light',
    synonyms: 'tricolour anchor navigation lantern',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    flags: safety,
    shape: () =>
      dragArea([0.0042, 0.003, 0.006], 'Short cylinder of 55 mm x 95 mm with a coefficient of 0.8'),
    placement: (boat) => standingAt(upBy(atMast(boat, 1, 0.05, 0.09), 0.1)),
  },
  {
    id: 'masthead-vane',
    name: 'Wind vane at the masthead',
    synonyms: 'burgee indicator flag arrow',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    flags: moving,
    shape: () => dragArea([0.004, 0.002, 0.007], 'Arrow of 380 mm with its two tabs'),
    placement: (boat) => standingAt(upBy(atMast(boat, 1, 0, 0), 0.35)),
  },
  {
    id: 'masthead-camera',
    name: 'Masthead camera',
    synonyms: 'unit thermal obstacle detection',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    shape: () => body([0.18, 0.16, 0.16], roundedBox),
    placement: (boat) => standingAt(upBy(atMast(boat, 1, -0.1, 0), 0.05)),
  },
  {
    id: 'lightning-rod',
    name: 'Lightning rod',
    synonyms: 'conductor spike masthead',
    group: 'Masthead',
    zone: 'masthead',
    note: '',
    flags: safety,
    shape: () => rod(0.01),
    placement: (boat) => barBetween([atMast(boat, 1, 0.15, 0.06), upBy(atMast(boat, 1, 0.15, 0.06), 0.6)]),
  },
  {
    id: 'courtesy-flag',
    name: 'Flag below the spreader',
    synonyms: 'courtesy signal code flags pennant',
    group: 'Running rigging',
    zone: 'rig',
    note: '',
    shape: () => dragArea([0.012, 0.005, 0.025], 'Fluttering flag of 0.3 m x 0.45 m on its area at 0.09'),
    placement: (boat) =>
      standingAt({ ...atEdge(boat, mastFraction(boat), 0.3, 0), zM: atMast(boat, 0.3, 0, 0).zM }),
  },
];

function upBy(place: ReturnType<typeof atMast>, byM: number): ReturnType<typeof atMast> {
  return { ...place, zM: Math.round((place.zM + byM) * 1000) / 1000 };
}
