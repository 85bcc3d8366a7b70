import {
  atEdge,
  barBetween,
  halfBeamM,
  mastFraction,
  offCentre,
  onCentre,
  standingAt,
  tapedAtEdge,
  type BoatPlaces,
} from './boatPlaces';
import {
  flatOnDeckExposure,
  inCockpitExposure,
  moving,
  onDeckExposure,
  structural,
  type CatalogueEntry,
} from './catalogueEntry';
import { body, clothBundle, dragArea, drum, flatPlate, paintedTube, roundedBox, tube } from './shapes';

/** Half way out on deck, m. */
function halfOutM(boat: BoatPlaces, fraction: number): number {
  return Math.max(0.5 * halfBeamM(boat, fraction), 0.05);
}

/** Height of a coachroof, m. */
function coachroofM({ lengthM }: BoatPlaces): number {
  return Math.min(0.2 + 0.03 * lengthM, 1);
}

/** Cockpit, coachroof and what is worked from there. */
export const cockpitEntries: readonly CatalogueEntry[] = [
  {
    id: 'coachroof',
    name: 'Coachroof',
    synonyms: 'cabin trunk superstructure deckhouse cuddy',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'A sloped front and an open back.',
    flags: structural,
    shape: (boat) =>
      body([0.3 * boat.lengthM, Math.max(1.1 * halfBeamM(boat, 0.5), 0.3), coachroofM(boat)], {
        x: [0.5, 0.38, 0.68],
        y: [0.8, 0.6, 1],
        z: [0.1, 0.03, 0.3],
        why: 'Low box on a deck, sloped in front',
      }),
    placement: (boat) => standingAt(onCentre(boat, 0.5, 0)),
  },
  {
    id: 'sprayhood',
    name: 'Sprayhood',
    synonyms: 'dodger canvas companionway hood',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'Up. It also shelters the crew behind it: say so in their exposure.',
    shape: (boat) =>
      body([1.1, Math.max(halfBeamM(boat, 0.66), 0.6), 0.7], {
        x: [0.9, 0.7, 1.2],
        y: [0.9, 0.7, 1.2],
        z: [0.4, 0.2, 0.8],
        why: 'Open hood of cloth',
      }),
    placement: (boat) => standingAt(onCentre(boat, 0.66, coachroofM(boat))),
  },
  {
    id: 'bimini',
    name: 'Bimini',
    synonyms: 'sun awning canopy canvas',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'Cloth and frame, flat.',
    shape: (boat) => body([1.8, Math.max(1.2 * halfBeamM(boat, 0.85), 0.6), 0.12], flatPlate),
    placement: (boat) => standingAt(onCentre(boat, 0.85, 2)),
  },
  {
    id: 'cockpit-coamings',
    name: 'Cockpit coamings',
    synonyms: 'seat backs edge',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    flags: structural,
    exposure: onDeckExposure,
    shape: ({ lengthM }) =>
      body([0.25 * lengthM, 0.2, 0.25], { x: [0.6, 0.4, 0.9], y: [0.7, 0.5, 1], why: 'Low rounded wall' }),
    placement: (boat) => standingAt(offCentre(boat, 0.77, halfOutM(boat, 0.77), 0), { pair: true }),
  },
  {
    id: 'primary-winches',
    name: 'Primary winches',
    synonyms: 'headsail sheet winch drum grinder',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'Two to a side.',
    flags: moving,
    shape: ({ lengthM }) => body([0.01 * lengthM + 0.05, 0.01 * lengthM + 0.05, 0.01 * lengthM + 0.07], drum),
    placement: (boat) =>
      tapedAtEdge(boat, { fraction: 0.7, lastFraction: 0.82, count: 2, inM: 0.25, aboveM: 0.08 }),
  },
  {
    id: 'coachroof-winches',
    name: 'Coachroof winches',
    synonyms: 'halyard winch drum',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    flags: moving,
    shape: ({ lengthM }) =>
      body([0.008 * lengthM + 0.04, 0.008 * lengthM + 0.04, 0.008 * lengthM + 0.05], drum),
    placement: (boat) =>
      standingAt(offCentre(boat, 0.62, halfOutM(boat, 0.62), coachroofM(boat)), { pair: true }),
  },
  {
    id: 'clutches',
    name: 'Clutches',
    synonyms: 'jammers rope stoppers halyard bank',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'A bank on each side of the companionway.',
    flags: moving,
    exposure: onDeckExposure,
    shape: () => body([0.2, 0.22, 0.09]),
    placement: (boat) =>
      standingAt(offCentre(boat, 0.58, halfOutM(boat, 0.58), coachroofM(boat)), { pair: true }),
  },
  {
    id: 'rope-tails',
    name: 'Rope tails and bags',
    synonyms: 'line bag coil halyard tails',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    exposure: inCockpitExposure,
    shape: () => body([0.15, 0.35, 0.35], clothBundle),
    placement: (boat) => standingAt(offCentre(boat, 0.66, halfOutM(boat, 0.66), 0.1), { pair: true }),
  },
  {
    id: 'grinder-pedestal',
    name: 'Grinder pedestal',
    synonyms: 'coffee grinder winch handles',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    flags: moving,
    exposure: inCockpitExposure,
    shape: () =>
      body([0.3, 0.42, 0.85], { x: [0.8, 0.6, 1], y: [0.7, 0.5, 0.9], why: 'Post with two cranks' }),
    placement: (boat) => standingAt(onCentre(boat, 0.71, 0)),
  },
  {
    id: 'wheels',
    name: 'Wheels and pedestals',
    synonyms: 'steering wheel helm pedestal',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'A pair; set it single and move it to the centreline for one wheel.',
    flags: moving,
    exposure: inCockpitExposure,
    shape: ({ lengthM }) => {
      const best = 0.03 + 0.0025 * lengthM;
      return dragArea([best, 0.7 * best, 1.4 * best], 'Rim of 32 mm, five spokes, pedestal of 0.7 m x 90 mm');
    },
    placement: (boat) => standingAt(offCentre(boat, 0.82, halfOutM(boat, 0.82), 0.6), { pair: true }),
  },
  {
    id: 'tiller',
    name: 'Tiller and extension',
    synonyms: 'helm stick steering',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    flags: moving,
    exposure: inCockpitExposure,
    shape: () => paintedTube(0.035, ['joined', 'free']),
    placement: (boat) =>
      barBetween([onCentre(boat, 0.95, 0.35), onCentre(boat, 0.95 - 1.3 / boat.lengthM, 0.55)]),
  },
  {
    id: 'binnacle',
    name: 'Compass binnacle',
    synonyms: 'pedestal instruments plotter console',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    exposure: inCockpitExposure,
    shape: () => body([0.25, 0.3, 0.95], roundedBox),
    placement: (boat) => standingAt(onCentre(boat, 0.78, 0)),
  },
  {
    id: 'traveller',
    name: 'Mainsheet traveller',
    synonyms: 'track car horse',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    flags: moving,
    exposure: onDeckExposure,
    shape: (boat) => body([0.1, Math.max(1.4 * halfBeamM(boat, 0.8), 0.3), 0.1]),
    placement: (boat) => standingAt(onCentre(boat, 0.8, 0)),
  },
  {
    id: 'deck-hatches',
    name: 'Deck hatches',
    synonyms: 'hatch skylight coachroof lid',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'Three on the centreline, shut.',
    exposure: flatOnDeckExposure,
    shape: () => body([0.5, 0.5, 0.06], roundedBox),
    placement: (boat) =>
      standingAt(onCentre(boat, 0.45, coachroofM(boat)), {
        count: 3,
        last: onCentre(boat, 0.58, coachroofM(boat)),
      }),
  },
  {
    id: 'companionway-hatch',
    name: 'Companionway hatch and garage',
    synonyms: 'sliding hood entrance washboards',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: '',
    exposure: onDeckExposure,
    shape: () => body([0.9, 0.8, 0.12], roundedBox),
    placement: (boat) => standingAt(onCentre(boat, 0.62, coachroofM(boat))),
  },
  {
    id: 'sail-bags',
    name: 'Sail bags, stacked',
    synonyms: 'sails stack ballast bag side deck',
    group: 'Sails, rolled or stowed',
    zone: 'cockpit',
    note: 'Three, aft to windward: set it single on the side on which they lie.',
    shape: ({ lengthM }) => body([0.12 * lengthM, 0.5, 0.5], clothBundle),
    placement: (boat) =>
      standingAt(offCentre(boat, 0.86, -halfOutM(boat, 0.86), 0), {
        count: 3,
        last: offCentre(boat, 0.86, halfOutM(boat, 0.86), 0),
      }),
  },
  {
    id: 'spinnaker-bags',
    name: 'Spinnaker bags',
    synonyms: 'turtle gennaker sail bag companionway rail',
    group: 'Sails, rolled or stowed',
    zone: 'decks',
    note: 'Hung on the guard rail, ready to hoist.',
    shape: () => body([0.7, 0.45, 0.55], clothBundle),
    placement: (boat) => standingAt(atEdge(boat, 0.32, 0.25, 0.02), { pair: true }),
  },
  {
    id: 'solar-panels-deck',
    name: 'Solar panels on deck',
    synonyms: 'photovoltaic power flexible',
    group: 'Aerials, lights and power',
    zone: 'cockpit',
    note: 'Glued down.',
    exposure: flatOnDeckExposure,
    shape: () => body([1.1, 0.55, 0.02], flatPlate),
    placement: (boat) =>
      standingAt(offCentre(boat, mastFraction(boat) + 0.1, halfOutM(boat, 0.5), coachroofM(boat)), {
        pair: true,
      }),
  },
  {
    id: 'bimini-frame',
    name: 'Frame of an awning, folded',
    synonyms: 'bimini sprayhood tubes bows',
    group: 'Cockpit and coachroof',
    zone: 'cockpit',
    note: 'Three bows folded together are three bars close behind one another.',
    shape: () => tube(0.022, ['joined', 'joined']),
    placement: (boat) => {
      const fold = (
        fraction: number,
      ): readonly [ReturnType<typeof onCentre>, ReturnType<typeof onCentre>] => [
        offCentre(boat, fraction, halfOutM(boat, 0.9), 0.7),
        offCentre(boat, fraction, -halfOutM(boat, 0.9), 0.7),
      ];
      return barBetween(fold(0.9), { row: { count: 3, last: fold(0.91) } });
    },
  },
];
