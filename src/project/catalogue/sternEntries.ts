import {
  atEdge,
  barBetween,
  halfBeamM,
  offCentre,
  onCentre,
  standingAt,
  tapedAtEdge,
  type BoatPlaces,
} from './boatPlaces';
import { moving, onDeckExposure, safety, structural, type CatalogueEntry } from './catalogueEntry';
import { body, clothBundle, dragArea, paintedTube, roundedBox, tube } from './shapes';

/** Half the width of an arch, m. */
export function archHalfM(boat: BoatPlaces): number {
  return Math.max(0.7 * halfBeamM(boat, 0.97), 0.2);
}

/** What stands on the pushpit, on the transom and behind it. */
export const sternEntries: readonly CatalogueEntry[] = [
  {
    id: 'pushpit-legs',
    name: 'Pushpit legs',
    synonyms: 'stern rail tube',
    group: 'Stern',
    zone: 'stern',
    note: 'Three legs to a side, 25 mm tube.',
    flags: safety,
    shape: () => tube(0.025),
    placement: (boat) =>
      tapedAtEdge(boat, {
        fraction: 0.9,
        lastFraction: 0.99,
        count: 3,
        inM: 0.08,
        lengthM: 0.62,
        leanOutDeg: 3,
      }),
  },
  {
    id: 'pushpit-rails',
    name: 'Pushpit rails',
    synonyms: 'stern rail tube',
    group: 'Stern',
    zone: 'stern',
    note: 'Two to a side, bending in towards the transom’s middle.',
    flags: safety,
    shape: () => tube(0.025, ['joined', 'joined']),
    placement: (boat) => {
      const inM = 0.3 * halfBeamM(boat, 0.99);
      return barBetween([atEdge(boat, 0.9, 0.05, 0.31), atEdge(boat, 0.99, inM, 0.31)], {
        row: { count: 2, last: [atEdge(boat, 0.9, 0.03, 0.62), atEdge(boat, 0.99, inM, 0.62)] },
        pair: true,
      });
    },
  },
  {
    id: 'liferaft',
    name: 'Liferaft canister',
    synonyms: 'life raft valise safety',
    group: 'Safety gear',
    zone: 'stern',
    note: '',
    flags: safety,
    massKg: 55,
    shape: () => body([0.52, 0.75, 0.32], roundedBox),
    placement: (boat) => standingAt(onCentre(boat, 0.96, 0.05)),
  },
  {
    id: 'danbuoy',
    name: 'Danbuoy',
    synonyms: 'man overboard pole marker mob flag',
    group: 'Safety gear',
    zone: 'stern',
    note: 'In its tube on the pushpit.',
    flags: safety,
    shape: () => tube(0.06, ['joined', 'free']),
    placement: (boat) => barBetween([atEdge(boat, 0.98, 0.1, 0.1), atEdge(boat, 0.98, 0.1, 1.9)]),
  },
  {
    id: 'horseshoe-buoy',
    name: 'Horseshoe buoy with its light',
    synonyms: 'lifebuoy lifering man overboard mob',
    group: 'Safety gear',
    zone: 'stern',
    note: 'One on each side.',
    flags: safety,
    shape: () =>
      body([0.14, 0.5, 0.6], { x: [0.9, 0.6, 1.2], y: [0.9, 0.6, 1.2], why: 'Soft ring in its cover' }),
    placement: (boat) => standingAt(atEdge(boat, 0.96, 0.1, 0.15), { pair: true }),
  },
  {
    id: 'rescue-sling',
    name: 'Rescue sling',
    synonyms: 'lifesling man overboard mob throwing line bag',
    group: 'Safety gear',
    zone: 'stern',
    note: '',
    flags: safety,
    shape: () => body([0.18, 0.35, 0.4], clothBundle),
    placement: (boat) => standingAt(atEdge(boat, 0.94, 0.1, 0.2)),
  },
  {
    id: 'jerrycans',
    name: 'Jerrycans on the rail',
    synonyms: 'fuel water cans',
    group: 'Stern',
    zone: 'stern',
    note: 'Three, for the delivery.',
    shape: () => body([0.35, 0.17, 0.45], roundedBox),
    placement: (boat) =>
      standingAt(atEdge(boat, 0.8, 0.15, 0), {
        count: 3,
        last: atEdge(boat, 0.8 + 1.2 / boat.lengthM, 0.15, 0),
      }),
  },
  {
    id: 'stern-arch',
    name: 'Stern arch',
    synonyms: 'gantry targa goalpost frame',
    group: 'Stern',
    zone: 'stern',
    note: 'Two legs to a side; its crossbar is a fitting of its own.',
    flags: structural,
    shape: () => tube(0.05),
    placement: (boat) => {
      const leg = (fraction: number): readonly [ReturnType<typeof onCentre>, ReturnType<typeof onCentre>] => [
        atEdge(boat, fraction, 0.1, 0),
        offCentre(boat, fraction + 0.01, archHalfM(boat), 2),
      ];
      return barBetween(leg(0.94), { row: { count: 2, last: leg(0.97) }, pair: true });
    },
  },
  {
    id: 'stern-arch-crossbars',
    name: 'Crossbars of the stern arch',
    synonyms: 'gantry targa goalpost beam',
    group: 'Stern',
    zone: 'stern',
    note: 'Two, athwart.',
    flags: structural,
    shape: () => tube(0.05, ['joined', 'joined']),
    placement: (boat) => {
      const cross = (
        fraction: number,
      ): readonly [ReturnType<typeof onCentre>, ReturnType<typeof onCentre>] => [
        offCentre(boat, fraction, archHalfM(boat), 2),
        offCentre(boat, fraction, -archHalfM(boat), 2),
      ];
      return barBetween(cross(0.95), { row: { count: 2, last: cross(0.98) } });
    },
  },
  {
    id: 'outboard-bracket',
    name: 'Outboard on its bracket',
    synonyms: 'motor engine tender pushpit',
    group: 'Stern',
    zone: 'stern',
    note: '',
    flags: moving,
    shape: () => body([0.4, 0.25, 0.75], roundedBox),
    placement: (boat) => standingAt(offCentre(boat, 0.99, -0.5 * halfBeamM(boat, 0.99), 0.2)),
  },
  {
    id: 'ensign-staff',
    name: 'Flag staff',
    synonyms: 'ensign pole stern',
    group: 'Stern',
    zone: 'stern',
    note: '',
    shape: () => paintedTube(0.025, ['joined', 'free']),
    placement: (boat) => barBetween([atEdge(boat, 0.99, 0.2, 0.3), atEdge(boat, 1.02, 0.2, 1.6)]),
  },
  {
    id: 'ensign',
    name: 'Ensign',
    synonyms: 'national flag stern',
    group: 'Stern',
    zone: 'stern',
    note: 'Flying; a flag flutters, so the range is wide.',
    shape: ({ lengthM }) => {
      const best = 0.0005 * lengthM ** 2;
      return dragArea([best, 0.4 * best, 2 * best], 'Fluttering flag on its own area at about 0.1');
    },
    placement: (boat) => standingAt(atEdge(boat, 1.02, 0.2, 1.3)),
  },
  {
    id: 'davits',
    name: 'Davits',
    synonyms: 'tender crane dinghy arms',
    group: 'Stern',
    zone: 'stern',
    note: '',
    shape: () => tube(0.06, ['surface', 'free']),
    placement: (boat) =>
      barBetween(
        [
          offCentre(boat, 0.99, archHalfM(boat), 0.2),
          offCentre(boat, 0.99 + 1 / boat.lengthM, archHalfM(boat), 1.1),
        ],
        {
          pair: true,
        },
      ),
  },
  {
    id: 'tender',
    name: 'Tender in the davits',
    synonyms: 'dinghy inflatable rib boat',
    group: 'Stern',
    zone: 'stern',
    note: 'Athwart behind the transom.',
    shape: () => body([1.4, 2.6, 0.5], roundedBox),
    placement: (boat) => standingAt(onCentre(boat, 1 + 0.9 / boat.lengthM, 0.3)),
  },
  {
    id: 'tender-on-deck',
    name: 'Tender on the foredeck',
    synonyms: 'dinghy inflatable deflated boat',
    group: 'Bow',
    zone: 'bow',
    note: 'Upside down.',
    exposure: onDeckExposure,
    shape: () => body([2.4, 1.3, 0.45], roundedBox),
    placement: (boat) => standingAt(onCentre(boat, 0.25, 0)),
  },
  {
    id: 'boarding-ladder',
    name: 'Boarding ladder',
    synonyms: 'swimming stern steps',
    group: 'Stern',
    zone: 'stern',
    note: 'Folded up on the transom.',
    flags: moving,
    shape: () =>
      dragArea([0.035, 0.02, 0.06], 'Two rails of 25 mm and four rungs, partly behind the transom'),
    placement: (boat) => standingAt(onCentre(boat, 1, 0.1)),
  },
  {
    id: 'vane-gear',
    name: 'Vane steering gear',
    synonyms: 'windvane self steering autopilot',
    group: 'Stern',
    zone: 'stern',
    note: 'Frame, vane and raised oar.',
    flags: moving,
    shape: () => dragArea([0.3, 0.18, 0.5], 'Frame of tubes with a vane of 0.2 m2 edge on'),
    placement: (boat) => standingAt(onCentre(boat, 1.02, 0.6)),
  },
];
