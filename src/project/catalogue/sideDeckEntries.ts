import {
  atEdge,
  barBetween,
  countAlong,
  mastFraction,
  offCentre,
  onCentre,
  standingAt,
  tapedAtEdge,
  halfBeamM,
} from './boatPlaces';
import {
  flatOnDeckExposure,
  moving,
  onDeckExposure,
  safety,
  structural,
  type CatalogueEntry,
} from './catalogueEntry';
import { body, dragArea, netEdge, oval, paintedTube, rope, roundedBox, sideNet, tube, wire } from './shapes';

/** Most that stanchions stand apart, m: the usual offshore rule of 2.2 m, a little less. */
const stanchionSpacingM = 2;

/** What stands along the deck edges. */
export const sideDeckEntries: readonly CatalogueEntry[] = [
  {
    id: 'stanchions',
    name: 'Stanchions',
    synonyms: 'guard rail lifeline posts',
    group: 'Side decks',
    zone: 'decks',
    note: 'At most 2 m apart, 0.62 m high, 25 mm tube.',
    flags: safety,
    shape: () => tube(0.025),
    placement: (boat) =>
      tapedAtEdge(boat, {
        fraction: 0.17,
        lastFraction: 0.87,
        count: countAlong(0.7 * boat.lengthM, stanchionSpacingM),
        inM: 0.06,
        lengthM: 0.62,
        leanOutDeg: 3,
      }),
  },
  {
    id: 'guard-wires',
    name: 'Guard wires',
    synonyms: 'lifelines rails safety lines',
    group: 'Side decks',
    zone: 'decks',
    note: 'Two to a side, straight from pulpit to pushpit: cut into two fittings where the deck edge curves much.',
    flags: safety,
    shape: () => wire(0.005),
    placement: (boat) =>
      barBetween([atEdge(boat, 0.13, 0.04, 0.31), atEdge(boat, 0.9, 0.06, 0.31)], {
        row: { count: 2, last: [atEdge(boat, 0.13, 0.02, 0.61), atEdge(boat, 0.9, 0.03, 0.61)] },
        pair: true,
      }),
  },
  {
    id: 'guard-wire-net',
    name: 'Net between the guard wires',
    synonyms: 'netting mesh headsail safety',
    group: 'Side decks',
    zone: 'decks',
    note: 'Over the foremost quarter of a side; its mesh sets the solidity.',
    flags: safety,
    shape: ({ lengthM }) => sideNet(0.25 * lengthM, 0.6, 0.1),
    placement: (boat) => standingAt(atEdge(boat, 0.27, 0.05, 0), { pair: true }),
  },
  {
    id: 'gate-stanchions',
    name: 'Gate stanchions with braces',
    synonyms: 'boarding gates guard rail gateway',
    group: 'Side decks',
    zone: 'decks',
    note: 'Two to a side beside the gangway; the brace is counted by a length half as long again.',
    flags: safety,
    shape: () => tube(0.025),
    placement: (boat) =>
      tapedAtEdge(boat, {
        fraction: 0.58,
        lastFraction: 0.58 + 0.7 / boat.lengthM,
        count: 2,
        inM: 0.06,
        lengthM: 0.93,
      }),
  },
  {
    id: 'weather-cloths',
    name: 'Weather cloths',
    synonyms: 'spray dodgers side cloth name canvas',
    group: 'Side decks',
    zone: 'decks',
    note: 'Cloth between the guard wires beside the cockpit.',
    shape: ({ lengthM }) =>
      body([0.17 * lengthM, 0.02, 0.5], {
        x: [1.2, 0.8, 2],
        y: [1.2, 1, 1.4],
        why: 'Slack cloth as a plate',
      }),
    placement: (boat) => standingAt(atEdge(boat, 0.78, 0.04, 0.08), { pair: true }),
  },
  {
    id: 'jackstays',
    name: 'Jackstays',
    synonyms: 'jacklines safety harness webbing straps',
    group: 'Side decks',
    zone: 'decks',
    note: '',
    flags: safety,
    exposure: flatOnDeckExposure,
    shape: ({ lengthM }) =>
      dragArea([0.0009 * lengthM, 0.0003 * lengthM, 0.002 * lengthM], 'Strap of 25 mm, a few loops standing'),
    placement: (boat) => standingAt(atEdge(boat, 0.48, 0.5 * halfBeamM(boat, 0.48), 0.02), { pair: true }),
  },
  {
    id: 'handholds',
    name: 'Handholds on the coachroof',
    synonyms: 'grab rails handrails',
    group: 'Side decks',
    zone: 'decks',
    note: '',
    flags: safety,
    exposure: onDeckExposure,
    shape: ({ lengthM }) => body([0.13 * lengthM, 0.03, 0.06]),
    placement: (boat) =>
      standingAt(offCentre(boat, 0.5, Math.max(0.4 * halfBeamM(boat, 0.5), 0.05), 0.45), { pair: true }),
  },
  {
    id: 'granny-bars',
    name: 'Mast pulpits',
    synonyms: 'granny bars mast guard tube',
    group: 'Side decks',
    zone: 'decks',
    note: 'Two legs of a bar on each side of the mast.',
    flags: safety,
    shape: () => tube(0.028),
    placement: (boat) => {
      const start = offCentre(boat, mastFraction(boat), 0.6, 0);
      const end = offCentre(boat, mastFraction(boat), 0.55, 0.95);
      const last = offCentre(boat, mastFraction(boat) + 0.5 / boat.lengthM, 0.6, 0);
      const lastEnd = offCentre(boat, mastFraction(boat) + 0.5 / boat.lengthM, 0.55, 0.95);
      return barBetween([start, end], { row: { count: 2, last: [last, lastEnd] }, pair: true });
    },
  },
  {
    id: 'headsail-tracks',
    name: 'Headsail tracks and cars',
    synonyms: 'genoa jib sheet lead fairlead rail',
    group: 'Side decks',
    zone: 'decks',
    note: '',
    exposure: flatOnDeckExposure,
    shape: ({ lengthM }) => body([0.14 * lengthM, 0.04, 0.05], roundedBox),
    placement: (boat) => standingAt(atEdge(boat, 0.52, 0.4 * halfBeamM(boat, 0.52), 0), { pair: true }),
  },
  {
    id: 'deck-blocks',
    name: 'Deck blocks',
    synonyms: 'turning block organiser pulley sheave',
    group: 'Side decks',
    zone: 'decks',
    note: 'Eight to a side.',
    exposure: onDeckExposure,
    shape: () => body([0.11, 0.06, 0.1]),
    placement: (boat) => tapedAtEdge(boat, { fraction: 0.35, lastFraction: 0.85, count: 8, inM: 0.3 }),
  },
  {
    id: 'outriggers',
    name: 'Outriggers',
    synonyms: 'sheeting poles jockey whisker',
    group: 'Side decks',
    zone: 'decks',
    note: 'Poles out from the deck edge for the headsail sheets.',
    flags: { ...structural, ...moving },
    shape: ({ lengthM }) => paintedTube(0.0052 * lengthM, ['surface', 'free']),
    placement: (boat) =>
      barBetween([atEdge(boat, 0.45, 0.05, 0.15), atEdge(boat, 0.48, -0.14 * boat.lengthM, 0.9)], {
        pair: true,
      }),
  },
  {
    id: 'shroud-base-outriggers',
    name: 'Mast outriggers',
    synonyms: 'shroud outrigger deck spreaders poles',
    group: 'Standing rigging',
    zone: 'rig',
    note: 'Poles from the mast foot that spread the shrouds beyond the hull; an oval, twice as long as thick.',
    flags: structural,
    shape: ({ lengthM }) => oval(0.015 * lengthM, 0.0075 * lengthM, ['joined', 'free']),
    placement: (boat) =>
      barBetween(
        [
          offCentre(boat, mastFraction(boat), 0.15, 0.4),
          atEdge(boat, mastFraction(boat), -0.08 * boat.lengthM, 0.6),
        ],
        { pair: true },
      ),
  },
  {
    id: 'preventer-poles',
    name: 'Preventer poles',
    synonyms: 'boom outrigger tangon guy pole',
    group: 'Side decks',
    zone: 'decks',
    note: 'Stowed along the guard rail; set, it is another placement.',
    flags: moving,
    shape: ({ lengthM }) => paintedTube(0.006 * lengthM, ['free', 'free']),
    placement: (boat) =>
      barBetween([atEdge(boat, 0.3, 0.1, 0.3), atEdge(boat, 0.55, 0.1, 0.3)], { pair: true }),
  },
  {
    id: 'lazy-sheets',
    name: 'Lazy sheets',
    synonyms: 'headsail sheet rope slack line',
    group: 'Running rigging',
    zone: 'decks',
    note: '',
    shape: ({ lengthM }) => rope(0.0006 * lengthM + 0.004),
    placement: (boat) => barBetween([clewAt(boat), atEdge(boat, 0.8, 0.4, 0.2)], { pair: true }),
  },
  {
    id: 'toe-rails',
    name: 'Toe rails',
    synonyms: 'bulwark foot rail gunwale',
    group: 'Side decks',
    zone: 'decks',
    note: 'The one to windward stands in the wind; the other in its lee and the deck’s.',
    exposure: onDeckExposure,
    shape: ({ lengthM }) =>
      body([0.8 * lengthM, 0.03, 0.04], { x: [1, 0.6, 1.4], y: [0.8, 0.5, 1.2], why: 'Low rail on an edge' }),
    placement: (boat) => standingAt(atEdge(boat, 0.5, 0.02, 0), { pair: true }),
  },
  {
    id: 'chainplates',
    name: 'Chainplates and rigging screws',
    synonyms: 'turnbuckle bottlescrew shroud foot',
    group: 'Standing rigging',
    zone: 'decks',
    note: 'Two to a side.',
    flags: structural,
    shape: ({ lengthM }) => paintedTube(0.0025 * lengthM, ['surface', 'joined']),
    placement: (boat) =>
      tapedAtEdge(boat, {
        fraction: mastFraction(boat),
        lastFraction: mastFraction(boat) + 0.03,
        count: 2,
        inM: 0.1,
        lengthM: 0.03 * boat.lengthM,
      }),
  },
  {
    id: 'fenders',
    name: 'Fenders hung out',
    synonyms: 'bumpers mooring harbour',
    group: 'Side decks',
    zone: 'decks',
    note: 'For the passage from the harbour, or forgotten.',
    shape: ({ lengthM }) => tube(0.012 * lengthM + 0.08, ['free', 'free']),
    placement: (boat) =>
      barBetween([atEdge(boat, 0.4, -0.1, -0.1), atEdge(boat, 0.4, -0.1, -0.7)], {
        row: { count: 3, last: [atEdge(boat, 0.75, -0.1, -0.1), atEdge(boat, 0.75, -0.1, -0.7)] },
        pair: true,
      }),
  },
  {
    id: 'trampoline-net',
    name: 'Trampoline',
    synonyms: 'net netting multihull catamaran trimaran mesh',
    group: 'Hull and foils',
    zone: 'hull',
    note: 'A net lying nearly along the wind, as a drag area; nets get a family of their own later.',
    shape: ({ lengthM, beamM }) =>
      netEdge(0.02 * lengthM * beamM, 0.4, 'Edge and sag of a net between the hulls'),
    placement: (boat) => standingAt(onCentre(boat, 0.35, 0)),
  },
];

/** Where the clew of a headsail hangs. */
function clewAt(boat: Parameters<CatalogueEntry['placement']>[0]) {
  return offCentre(boat, Math.min(mastFraction(boat) + 0.03, 0.6), 0.4 * halfBeamM(boat, 0.45) + 0.05, 1.2);
}
