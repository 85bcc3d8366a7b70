import {
  atEdge,
  barBetween,
  freeboardM,
  fromWater,
  halfBeamM,
  mastFraction,
  offCentre,
  onCentre,
  standingAt,
  tapedAtEdge,
} from './boatPlaces';
import { inCockpitExposure, inRowExposure, moving, structural, type CatalogueEntry } from './catalogueEntry';
import { body, paintedTube, seated, standing } from './shapes';

/** Crew on the rail of a boat that long. */
function railCrew(lengthM: number): number {
  return Math.min(Math.max(Math.round(0.4 * lengthM), 2), 16);
}

/** Crew, hull and what can be lifted out of the water. */
export const crewAndHullEntries: readonly CatalogueEntry[] = [
  {
    id: 'crew-on-rail',
    name: 'Crew on the rail',
    synonyms: 'people hiking sitting windward side',
    group: 'Crew',
    zone: 'crew',
    note: 'To starboard; copy it to port for the other tack and give each the share of the time.',
    exposure: inRowExposure,
    shape: () => body([0.46, 0.6, 0.82], seated),
    placement: (boat) => {
      const count = railCrew(boat.lengthM);
      const lastFraction = 0.5 + (0.62 * (count - 1)) / boat.lengthM;
      return tapedAtEdge(boat, { fraction: 0.5, lastFraction, count, inM: 0.25, pair: false });
    },
  },
  {
    id: 'helm',
    name: 'Helm, standing',
    synonyms: 'helmsman steering person crew',
    group: 'Crew',
    zone: 'crew',
    note: '',
    shape: () => body([0.36, 0.52, 1.62], standing),
    placement: (boat) => standingAt(offCentre(boat, 0.85, -0.5 * halfBeamM(boat, 0.85), 0)),
  },
  {
    id: 'helm-seated',
    name: 'Helm, sitting out',
    synonyms: 'helmsman steering tiller person crew',
    group: 'Crew',
    zone: 'crew',
    note: '',
    shape: () => body([0.46, 0.6, 0.82], seated),
    placement: (boat) => tapedAtEdge(boat, { fraction: 0.84, inM: 0.3, pair: false }),
  },
  {
    id: 'trimmer',
    name: 'Trimmer, crouched',
    synonyms: 'crew person winch sheet',
    group: 'Crew',
    zone: 'crew',
    note: '',
    exposure: inCockpitExposure,
    shape: () => body([0.5, 0.55, 0.95], seated),
    placement: (boat) => standingAt(offCentre(boat, 0.68, 0.4 * halfBeamM(boat, 0.68), 0)),
  },
  {
    id: 'grinders',
    name: 'Grinders at the pedestal',
    synonyms: 'crew people winch pit',
    group: 'Crew',
    zone: 'crew',
    note: 'Two, bent over.',
    exposure: inCockpitExposure,
    shape: () => body([0.6, 0.52, 1.2], standing),
    placement: (boat) =>
      standingAt(onCentre(boat, 0.71 - 0.6 / boat.lengthM, 0), {
        count: 2,
        last: onCentre(boat, 0.71 + 0.6 / boat.lengthM, 0),
      }),
  },
  {
    id: 'crew-at-mast',
    name: 'Crew at the mast, standing',
    synonyms: 'mastman bowman person foredeck halyard',
    group: 'Crew',
    zone: 'crew',
    note: 'For the share of the time in which somebody works there.',
    dutyFraction: { default: 0.1, byCondition: [] },
    shape: () => body([0.36, 0.52, 1.75], standing),
    placement: (boat) => standingAt(offCentre(boat, mastFraction(boat) + 0.4 / boat.lengthM, 0.5, 0)),
  },
  {
    id: 'crew-on-bow',
    name: 'Crew on the bow',
    synonyms: 'bowman foredeck person start line',
    group: 'Crew',
    zone: 'crew',
    note: 'For the share of the time in which somebody works there.',
    dutyFraction: { default: 0.1, byCondition: [] },
    shape: () => body([0.45, 0.55, 1.3], standing),
    placement: (boat) => standingAt(onCentre(boat, 0.08, 0)),
  },
  {
    id: 'crew-in-cockpit',
    name: 'Crew in the cockpit, sitting',
    synonyms: 'people navigator passengers guests',
    group: 'Crew',
    zone: 'crew',
    note: 'Two.',
    exposure: inCockpitExposure,
    shape: () => body([0.5, 0.5, 0.7], seated),
    placement: (boat) =>
      standingAt(offCentre(boat, 0.75, -0.4 * halfBeamM(boat, 0.75) - 0.05, 0), {
        count: 2,
        last: offCentre(boat, 0.75, 0.4 * halfBeamM(boat, 0.75) + 0.05, 0),
      }),
  },
  {
    id: 'hull-topsides',
    name: 'Hull topsides and transom',
    synonyms: 'freeboard sides stern hull windage',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'The whole hull above the water as one body, its square transom in the coefficient from ahead.',
    flags: structural,
    shape: (boat) =>
      body([boat.lengthM, boat.beamM, Math.max(freeboardM(boat, 0.5), 0.1)], {
        x: [0.3, 0.2, 0.45],
        y: [0.75, 0.55, 1],
        z: [0.02, 0, 0.06],
        why: 'Fine bow and square transom, between a streamlined and a square-backed body',
      }),
    placement: (boat) => standingAt(fromWater(boat, 0.5, 0, 0)),
  },
  {
    id: 'canoe-body',
    name: 'Canoe body, when lifted',
    synonyms: 'hull bottom foiling flying underbody',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'Below the waterplane: it counts only where the condition’s rise lifts it out.',
    flags: structural,
    shape: (boat) =>
      body([0.9 * boat.lengthM, 0.77 * boat.beamM, Math.max(0.03 * boat.lengthM, 0.1)], {
        x: [0.25, 0.15, 0.4],
        y: [0.6, 0.4, 0.85],
        z: [0.02, 0, 0.06],
        why: 'Rounded bow and flat run',
      }),
    placement: (boat) => standingAt(fromWater(boat, 0.52, 0, -Math.max(0.03 * boat.lengthM, 0.1))),
  },
  {
    id: 'float-topsides',
    name: 'Floats of a multihull',
    synonyms: 'ama outrigger trimaran catamaran hull',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'A pair, at the boat’s full beam.',
    flags: structural,
    shape: ({ lengthM }) =>
      body([0.9 * lengthM, 0.05 * lengthM, 0.06 * lengthM], {
        x: [0.25, 0.15, 0.4],
        y: [0.65, 0.45, 0.9],
        z: [0.02, 0, 0.06],
        why: 'Slender hull with round sides',
      }),
    placement: (boat) => standingAt(fromWater(boat, 0.5, 0.475 * boat.beamM, 0.05), { pair: true }),
  },
  {
    id: 'crossbeams',
    name: 'Crossbeams of a multihull',
    synonyms: 'beam trimaran catamaran akas',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'Two round beams; a faired one needs a section of its own, which comes later.',
    flags: structural,
    shape: ({ lengthM }) => paintedTube(0.018 * lengthM, ['joined', 'joined']),
    placement: (boat) => {
      const beam = (
        fraction: number,
      ): readonly [ReturnType<typeof onCentre>, ReturnType<typeof onCentre>] => [
        offCentre(boat, fraction, 0.48 * boat.beamM, 0),
        offCentre(boat, fraction, -0.48 * boat.beamM, 0),
      ];
      return barBetween(beam(0.35), { row: { count: 2, last: beam(0.72) } });
    },
  },
  {
    id: 'lifting-foils',
    name: 'Lifting foils outside the hull',
    synonyms: 'foil tips dali hydrofoil wings',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'As a body with typed coefficients: in the air a section that lifts does more than this; such sections come later.',
    flags: { ...structural, ...moving },
    shape: ({ lengthM }) =>
      body([0.036 * lengthM, 0.08 * lengthM, 0.012 * lengthM], {
        x: [0.15, 0.06, 0.3],
        y: [0.5, 0.3, 0.8],
        z: [1, 0.6, 1.3],
        why: 'Section with its nose forward, seen along the span and from above',
      }),
    placement: (boat) =>
      standingAt(
        fromWater(
          boat,
          0.43,
          halfBeamM(boat, 0.43) + 0.04 * boat.lengthM,
          0.4 * Math.max(freeboardM(boat, 0.43), 0.1),
        ),
        { pair: true },
      ),
  },
  {
    id: 'raised-daggerboards',
    name: 'Daggerboards, raised',
    synonyms: 'centreboard lifting keel foil board',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'The part above deck as a body with typed coefficients: a fixed section that lifts comes later.',
    flags: moving,
    shape: ({ lengthM }) =>
      body([0.04 * lengthM, 0.006 * lengthM, 0.1 * lengthM], {
        x: [0.2, 0.08, 0.5],
        y: [1.2, 0.9, 1.5],
        why: 'Section with its nose forward, and square across it',
      }),
    placement: (boat) =>
      standingAt(offCentre(boat, 0.45, 0.4 * halfBeamM(boat, 0.45) + 0.03, 0), { pair: true }),
  },
  {
    id: 'raised-rudders',
    name: 'Rudder, raised',
    synonyms: 'kick up rudders blade stock transom windward',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'Out of the water behind the transom, as a body with typed coefficients: a section that lifts comes later.',
    flags: moving,
    shape: ({ lengthM }) =>
      body([0.03 * lengthM, 0.004 * lengthM + 0.02, 0.1 * lengthM], {
        x: [0.3, 0.1, 0.6],
        y: [1.1, 0.8, 1.4],
        why: 'Section with its nose forward, and square across it',
      }),
    placement: (boat) => standingAt(offCentre(boat, 1.02, 0.6 * halfBeamM(boat, 1) + 0.05, 0)),
  },
  {
    id: 'rudder-head',
    name: 'Rudder heads and cassettes',
    synonyms: 'stock transom rudder tiller arm',
    group: 'Hull and foils',
    zone: 'stern',
    note: 'A pair on the transom.',
    flags: structural,
    shape: () =>
      body([0.35, 0.14, 0.6], {
        x: [0.9, 0.7, 1.1],
        y: [0.9, 0.7, 1.1],
        why: 'Rounded box in the transom’s wake',
      }),
    placement: (boat) =>
      standingAt(offCentre(boat, 1.01, 0.55 * halfBeamM(boat, 1) + 0.05, -0.3), { pair: true }),
  },
  {
    id: 'hiking-racks',
    name: 'Hiking racks',
    synonyms: 'wings rails sport boat benches',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'The outer tube of each rack.',
    flags: structural,
    shape: () => paintedTube(0.05, ['joined', 'joined']),
    placement: (boat) =>
      barBetween(
        [atEdge(boat, 0.45, -0.1 * boat.lengthM, 0.1), atEdge(boat, 0.75, -0.1 * boat.lengthM, 0.1)],
        { pair: true },
      ),
  },
];
