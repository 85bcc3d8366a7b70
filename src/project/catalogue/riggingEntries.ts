import { atEdge, atMast, barBetween, mastFraction, onCentre, type BoatPlaces } from './boatPlaces';
import { bowspritFraction } from './bowEntries';
import {
  atMastExposure,
  behindSailExposure,
  moving,
  structural,
  type CatalogueEntry,
} from './catalogueEntry';
import { boomFraction, boomHeightM, mastThicknessM } from './mastEntries';
import { rod, rolledSail, rope, wire } from './shapes';

/** A cap shroud's diameter, m; the others follow from it. */
function shroudM({ lengthM }: BoatPlaces): number {
  return Math.max(0.00085 * lengthM, 0.003);
}

/** A working rope's diameter, m. */
function ropeM({ lengthM }: BoatPlaces): number {
  return 0.005 + 0.0004 * lengthM;
}

/** Just clear of the mast's side, m. */
function sideM(boat: BoatPlaces): number {
  return 0.5 * mastThicknessM(boat) + 0.02;
}

/** Stays, shrouds, lines and rolled sails. */
export const riggingEntries: readonly CatalogueEntry[] = [
  {
    id: 'cap-shrouds',
    name: 'Cap shrouds',
    synonyms: 'upper verticals rigging rod wire stays',
    group: 'Standing rigging',
    zone: 'rig',
    note: 'Straight from the deck edge to the hounds, as if over the spreaders’ ends.',
    flags: structural,
    exposureLeeward: behindSailExposure,
    shape: (boat) => rod(shroudM(boat)),
    placement: (boat) =>
      barBetween([atEdge(boat, mastFraction(boat) + 0.02, 0.1, 0.1), atMast(boat, 0.95, 0, sideM(boat))], {
        pair: true,
      }),
  },
  {
    id: 'lower-shrouds',
    name: 'Lower and diagonal shrouds',
    synonyms: 'intermediate diagonals rigging rod wire stays',
    group: 'Standing rigging',
    zone: 'rig',
    note: 'From the deck to the lower spreaders, and from there to the upper ones.',
    flags: structural,
    exposureLeeward: behindSailExposure,
    shape: (boat) => rod(0.9 * shroudM(boat)),
    placement: (boat) =>
      barBetween([atEdge(boat, mastFraction(boat) + 0.02, 0.2, 0.1), atMast(boat, 0.33, 0, sideM(boat))], {
        row: {
          count: 2,
          last: [atMast(boat, 0.34, 0.2, 0.08 * boat.lengthM + 0.1), atMast(boat, 0.66, 0, sideM(boat))],
        },
        pair: true,
      }),
  },
  {
    id: 'forestay',
    name: 'Forestay',
    synonyms: 'headstay jib stay rod wire',
    group: 'Standing rigging',
    zone: 'rig',
    note: 'Bare; with a headsail on it, it is part of the sail.',
    flags: structural,
    shape: (boat) => rod(1.1 * shroudM(boat)),
    placement: (boat) => barBetween([onCentre(boat, 0.03, 0.1), atMast(boat, 0.92, -0.1, 0)]),
  },
  {
    id: 'inner-forestay',
    name: 'Inner forestay',
    synonyms: 'staysail stay baby stay cutter',
    group: 'Standing rigging',
    zone: 'rig',
    note: '',
    flags: structural,
    shape: (boat) => wire(0.9 * shroudM(boat)),
    placement: (boat) => barBetween([onCentre(boat, 0.18, 0.05), atMast(boat, 0.68, -0.1, 0)]),
  },
  {
    id: 'backstay',
    name: 'Backstay',
    synonyms: 'fixed permanent stay wire',
    group: 'Standing rigging',
    zone: 'rig',
    note: '',
    flags: structural,
    shape: (boat) => wire(0.9 * shroudM(boat)),
    placement: (boat) => barBetween([atMast(boat, 1, 0.2, 0), onCentre(boat, 0.99, 0.05)]),
  },
  {
    id: 'running-backstays',
    name: 'Running backstays',
    synonyms: 'runners stays rope',
    group: 'Standing rigging',
    zone: 'rig',
    note: '',
    flags: { ...structural, ...moving },
    exposureLeeward: behindSailExposure,
    shape: (boat) => rope(0.9 * shroudM(boat)),
    placement: (boat) =>
      barBetween([atMast(boat, 0.92, 0.1, 0.06), atEdge(boat, 0.95, 0.15, 0.1)], { pair: true }),
  },
  {
    id: 'checkstays',
    name: 'Checkstays',
    synonyms: 'check stay runners deflectors',
    group: 'Standing rigging',
    zone: 'rig',
    note: 'Down to where they join the runners.',
    flags: { ...structural, ...moving },
    exposureLeeward: behindSailExposure,
    shape: (boat) => rope(0.65 * shroudM(boat) + 0.001),
    placement: (boat) =>
      barBetween(
        [atMast(boat, 0.55, 0.05, 0.08), atEdge(boat, 0.85, 0.3, 0.2 * (boat.mastTopZM - boat.mastFootZM))],
        {
          pair: true,
        },
      ),
  },
  {
    id: 'headsail-rolled',
    name: 'Headsail, rolled',
    synonyms: 'furled jib genoa roller furler forestay',
    group: 'Sails, rolled or stowed',
    zone: 'bow',
    note: 'On the forestay, with its sheets around it.',
    flags: moving,
    shape: ({ lengthM }) => rolledSail(0.009 * lengthM + 0.02),
    placement: (boat) => barBetween([onCentre(boat, 0.03, 0.4), atMast(boat, 0.9, -0.15, 0)]),
  },
  {
    id: 'staysail-rolled',
    name: 'Staysail, rolled',
    synonyms: 'furled inner jib roller furler',
    group: 'Sails, rolled or stowed',
    zone: 'bow',
    note: '',
    flags: moving,
    shape: ({ lengthM }) => rolledSail(0.0045 * lengthM + 0.02),
    placement: (boat) => barBetween([onCentre(boat, 0.18, 0.3), atMast(boat, 0.66, -0.15, 0)]),
  },
  {
    id: 'code-sail-rolled',
    name: 'Code sail, rolled',
    synonyms: 'furled code zero reacher gennaker torque rope',
    group: 'Sails, rolled or stowed',
    zone: 'bow',
    note: 'Standing rolled at the bowsprit’s end.',
    flags: moving,
    shape: ({ lengthM }) => rolledSail(0.0065 * lengthM + 0.02),
    placement: (boat) => barBetween([onCentre(boat, -bowspritFraction, 0.4), atMast(boat, 0.98, -0.15, 0)]),
  },
  {
    id: 'halyards',
    name: 'Halyards outside the mast',
    synonyms: 'lines ropes hoist',
    group: 'Running rigging',
    zone: 'rig',
    note: 'Three ahead of the tube.',
    exposure: atMastExposure,
    shape: (boat) => rope(ropeM(boat)),
    placement: (boat) => {
      const outM = mastThicknessM(boat);
      return barBetween([atMast(boat, 0.02, -0.3, -outM), atMast(boat, 0.95, -0.2, -0.5 * outM)], {
        row: { count: 3, last: [atMast(boat, 0.02, -0.3, outM), atMast(boat, 0.95, -0.2, 0.5 * outM)] },
      });
    },
  },
  {
    id: 'signal-halyards',
    name: 'Signal halyards',
    synonyms: 'flag lines courtesy rope',
    group: 'Running rigging',
    zone: 'rig',
    note: 'Two falls on each side below the spreaders.',
    shape: () => rope(0.004),
    placement: (boat) => {
      const outM = 0.06 * boat.lengthM + 0.1;
      return barBetween([atMast(boat, 0.03, 0.1, outM), atMast(boat, 0.33, 0.1, outM)], {
        row: { count: 2, last: [atMast(boat, 0.03, 0.15, outM), atMast(boat, 0.33, 0.15, outM)] },
        pair: true,
      });
    },
  },
  {
    id: 'mainsheet',
    name: 'Mainsheet tackle',
    synonyms: 'sheet falls purchase rope boom',
    group: 'Running rigging',
    zone: 'cockpit',
    note: 'Four falls.',
    flags: moving,
    shape: (boat) => rope(ropeM(boat)),
    placement: (boat) => {
      const aft = mastFraction(boat) + 0.9 * boomFraction;
      const boom = onCentre(boat, aft, boomHeightM(boat));
      const deck = onCentre(boat, aft, 0.05);
      return barBetween(
        [
          { ...boom, yM: -0.09 },
          { ...deck, yM: -0.15 },
        ],
        {
          row: {
            count: 4,
            last: [
              { ...boom, yM: 0.09 },
              { ...deck, yM: 0.15 },
            ],
          },
        },
      );
    },
  },
  {
    id: 'topping-lift',
    name: 'Topping lift',
    synonyms: 'boom line rope',
    group: 'Running rigging',
    zone: 'rig',
    note: '',
    shape: (boat) => rope(0.8 * ropeM(boat)),
    placement: (boat) =>
      barBetween([
        atMast(boat, 1, 0.2, 0),
        onCentre(boat, mastFraction(boat) + 0.01 + boomFraction, boomHeightM(boat) + 0.15),
      ]),
  },
  {
    id: 'lazy-jacks',
    name: 'Lazy jacks',
    synonyms: 'mainsail cradle lines lazyjacks',
    group: 'Running rigging',
    zone: 'rig',
    note: 'Three legs to a side.',
    exposureLeeward: behindSailExposure,
    shape: () => rope(0.006),
    placement: (boat) => {
      const top = atMast(boat, 0.5, 0.1, 0.1);
      const aft = mastFraction(boat);
      const foot = (share: number) => ({
        ...onCentre(boat, aft + share * boomFraction, boomHeightM(boat) + 0.05),
        yM: 0.12,
      });
      return barBetween([top, foot(0.3)], { row: { count: 3, last: [top, foot(0.85)] }, pair: true });
    },
  },
  {
    id: 'reefing-lines',
    name: 'Reefing lines',
    synonyms: 'reef pennants leech clew rope',
    group: 'Running rigging',
    zone: 'rig',
    note: 'Two along the leech.',
    exposure: behindSailExposure,
    shape: (boat) => rope(ropeM(boat)),
    placement: (boat) => {
      const aft = mastFraction(boat) + 0.93 * boomFraction;
      const boom = onCentre(boat, aft, boomHeightM(boat) + 0.1);
      const reef = onCentre(boat, aft - 0.06, boomHeightM(boat) + 0.25 * boat.lengthM);
      return barBetween(
        [
          { ...boom, yM: 0.05 },
          { ...reef, yM: 0.05 },
        ],
        {
          row: {
            count: 2,
            last: [
              { ...boom, yM: -0.05 },
              { ...reef, yM: -0.05 },
            ],
          },
        },
      );
    },
  },
  {
    id: 'boom-preventer',
    name: 'Boom preventer line',
    synonyms: 'guy rope gybe foreguy',
    group: 'Running rigging',
    zone: 'rig',
    note: 'From the boom’s end forward to the bow, while it is rigged.',
    shape: (boat) => rope(ropeM(boat)),
    placement: (boat) =>
      barBetween([
        onCentre(boat, mastFraction(boat) + boomFraction, boomHeightM(boat)),
        atEdge(boat, 0.12, 0.1, 0.1),
      ]),
  },
  {
    id: 'spinnaker-sheets',
    name: 'Spinnaker sheets and guys',
    synonyms: 'gennaker lines rope lazy guy',
    group: 'Running rigging',
    zone: 'decks',
    note: 'Led outside everything along the rail.',
    shape: (boat) => rope(ropeM(boat)),
    placement: (boat) =>
      barBetween([atEdge(boat, 0.04, 0, 0.5), atEdge(boat, 0.95, 0.05, 0.15)], { pair: true }),
  },
];
