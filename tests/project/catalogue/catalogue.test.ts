import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  catalogue,
  fittingFromCatalogue,
  inGroups,
  searchCatalogue,
  suggestedZoneId,
} from '../../../src/project/catalogue/catalogue';
import { catalogueGroups, zoneKinds } from '../../../src/project/catalogue/catalogueEntry';
import { newProject, startingEntryIds, usualZones } from '../../../src/project/catalogue/newProject';
import { checkProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project, ProjectBoat } from '../../../src/project/file/schema';
import { projectLedger } from '../../../src/project/ledger/projectLedger';
import { between } from '../../properties/arbitraries';

function outlined(lengthM: number, beamM: number, mastTopM: number): ProjectBoat {
  return newProject({ name: 'Test', lengthM, beamM, draughtM: 0.2 * lengthM, mastTopM }).boat;
}

const thirteenM = outlined(13, 4.1, 20);

/** A deck line that says next to nothing, all at the stem, awash and without width. */
const tinyDeckLine = [0, 0.1, 0.2].map((aftOfStemM) => ({ aftOfStemM, freeboardM: 0, halfBeamM: 0 }));

const boats: readonly (readonly [string, ProjectBoat])[] = [
  ['5 m', outlined(5, 2, 7)],
  ['9 m', outlined(9, 3, 13)],
  ['13 m', thirteenM],
  ['24 m multihull', outlined(24, 16, 34)],
  ['40 m', outlined(40, 8.5, 55)],
  ['1 m', outlined(1, 0.3, 0.5)],
  ['200 m', outlined(200, 30, 150)],
  ['a tiny deck line', { ...outlined(6, 2, 8), deckLine: tinyDeckLine }],
  ['a mast below the deck, far off', { ...thirteenM, mast: { aftOfStemM: -300, topAboveWaterplaneM: 0 } }],
];

function projectWith(boat: ProjectBoat, entryIds: readonly string[]): Project {
  const blank = newProject({ name: 'Test', lengthM: 13, beamM: 4.1, draughtM: 2.6, mastTopM: 20 });
  const fittings = entryIds.map((id) => fittingFromCatalogue(id, boat, 'decks', id));
  return { ...blank, boat, fittings };
}

const everyId = catalogue.map(({ id }) => id);

describe.each(boats)('on a boat of %s', (_, boat) => {
  const project = projectWith(boat, everyId);

  it('every entry passes the checks of the project file', () => {
    const checked = checkProject(project);
    expect(checked.ok ? [] : checked.errors).toEqual([]);
  });

  it('every entry has a finite force and finite doubts', () => {
    const answer = projectLedger(project, {
      basis: { kind: 'condition', conditionId: 'upwind' },
      planId: null,
      againstPlanId: null,
    });
    if (!answer.ok) throw new Error('no ledger');
    const unfinished = answer.ledger.rows.filter(({ before }) => {
      const numbers: unknown[] = [];
      JSON.stringify(before, (_key, value: unknown) => {
        if (typeof value === 'number') numbers.push(value);
        return value;
      });
      return numbers.length === 0 || !numbers.every(Number.isFinite);
    });
    expect(unfinished.map(({ fittingId }) => fittingId)).toEqual([]);
    expect(answer.ledger.rows).toHaveLength(catalogue.length);
  });
});

it('the air works on every entry but what is under water, and on none beyond reason', () => {
  const answer = projectLedger(projectWith(thirteenM, everyId), {
    basis: { kind: 'condition', conditionId: 'upwind' },
    planId: null,
    againstPlanId: null,
  });
  if (!answer.ok) throw new Error('no ledger');
  const { rows } = answer.ledger;
  const dry = rows.filter(({ before }) => before.outcome.airPowerW > 0);
  const wet = everyId.filter((id) => !dry.some(({ fittingId }) => fittingId === id));
  expect(wet).toEqual(['canoe-body']);
  // At 16 kn of true wind a bare mast is the largest, with some 220 N.
  const large = rows.filter(({ before }) => Math.abs(before.outcome.dragAgainstTrackN) > 300);
  expect(large.map(({ fittingId }) => fittingId)).toEqual([]);
});

it('an entry fits any boat that the file allows', () => {
  const anyBoat = fc
    .record({
      lengthM: fc.double({ min: 1, max: 200, noNaN: true }),
      beamM: fc.double({ min: 0.1, max: 100, noNaN: true }),
      mastTopM: between(0, 150),
      mastAftM: between(-300, 300),
      freeboards: fc.array(between(-5, 50), { minLength: 3, maxLength: 6 }),
    })
    .map(({ lengthM, beamM, mastTopM, mastAftM, freeboards }) => ({
      ...outlined(lengthM, beamM, mastTopM),
      mast: { aftOfStemM: mastAftM, topAboveWaterplaneM: mastTopM },
      deckLine: freeboards.map((freeboardM, i) => ({
        aftOfStemM: (i / freeboards.length) * lengthM,
        freeboardM,
        halfBeamM: (i % 2) * 0.5 * beamM,
      })),
    }));
  fc.assert(
    fc.property(anyBoat, (boat) => {
      const checked = checkProject(projectWith(boat, everyId));
      expect(checked.ok ? [] : checked.errors).toEqual([]);
    }),
    { numRuns: 50 },
  );
}, 30_000);

describe('the list', () => {
  it('has names and ids of its own for each', () => {
    expect(new Set(everyId).size).toBe(catalogue.length);
    expect(new Set(catalogue.map(({ name }) => name.toLowerCase())).size).toBe(catalogue.length);
    expect(catalogue.length).toBeGreaterThanOrEqual(60);
  });

  it('has something under each head and each kind of zone', () => {
    expect(inGroups(catalogue).map(({ group }) => group)).toEqual([...catalogueGroups]);
    expect(zoneKinds.filter((kind) => !catalogue.some(({ zone }) => zone === kind))).toEqual([]);
  });

  it('says of each that its sizes have no source, and marks them as estimated', () => {
    for (const id of everyId) {
      const { note, shape, placement } = fittingFromCatalogue(id, thirteenM, 'decks', 'a');
      expect(note).toContain('common practice, no source');
      expect(placement.basis).toBe('estimated');
      if (shape.kind === 'roundBar') expect(shape.diameter.basis).toBe('estimated');
    }
  });

  it('marks what keeps people safe', () => {
    const safe = [
      'pulpit-legs',
      'stanchions',
      'guard-wires',
      'jackstays',
      'handholds',
      'bow-light',
      'stern-light',
    ];
    for (const id of safe) {
      expect(fittingFromCatalogue(id, thirteenM, 'decks', 'a').flags.safetyRequired, id).toBe(true);
    }
  });

  it('takes the id and the zone that it is given', () => {
    const fitting = fittingFromCatalogue('helm', thirteenM, 'crew', 'f7');
    expect([fitting.id, fitting.zoneId]).toEqual(['f7', 'crew']);
  });

  it('does not know an entry that is not there', () => {
    expect(() => fittingFromCatalogue('hammock', thirteenM, 'crew', 'f7')).toThrow(RangeError);
  });
});

describe('search', () => {
  const wantedFirst: readonly (readonly [string, string])[] = [
    ['stanch', 'stanchions'],
    ['lifelines', 'guard-wires'],
    ['Kicker', 'boom-vang'],
    ['vhf masthead', 'masthead-aerial'],
    ['GUARD-wires', 'guard-wires'],
    ['raft', 'liferaft'],
    ['people', 'crew-on-rail'],
  ];
  it.each(wantedFirst)('finds with "%s" first %s', (words, id) => {
    expect(searchCatalogue(words)[0]?.id).toBe(id);
  });

  it('finds every entry by its own name', () => {
    for (const entry of catalogue) expect(searchCatalogue(entry.name)).toContain(entry);
  });

  it('finds nothing for a word that nobody uses, and everything for no word', () => {
    expect(searchCatalogue('xylophone mast')).toEqual([]);
    expect(searchCatalogue('  ')).toEqual(catalogue);
  });

  it('takes any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(searchCatalogue(text).every((entry) => catalogue.includes(entry))).toBe(true);
      }),
    );
  });
});

describe('the suggested zone', () => {
  it('is the usual one by its id', () => {
    expect(zoneKinds.map((kind) => suggestedZoneId(kind, usualZones))).toEqual([...zoneKinds]);
  });

  it('is one whose name says so, else the first, else none', () => {
    const zones = [
      { id: 'a', name: 'Foredeck' },
      { id: 'b', name: 'Mast, rigging' },
      { id: 'c', name: 'Aft deck' },
    ];
    expect(suggestedZoneId('bow', zones)).toBe('a');
    expect(suggestedZoneId('masthead', zones)).toBe('b');
    expect(suggestedZoneId('stern', zones)).toBe('c');
    expect(suggestedZoneId('crew', [{ id: 'x', name: 'All' }])).toBe('x');
    expect(suggestedZoneId('crew', [])).toBeNull();
  });
});

describe('a new project', () => {
  it('is saved as it is, whatever the size of the boat', () => {
    fc.assert(
      fc.property(
        fc.record({
          name: fc.constant('Dinghy to ship'),
          lengthM: fc.double({ min: 1, max: 200, noNaN: true }),
          beamM: fc.double({ min: 0.1, max: 100, noNaN: true }),
          draughtM: fc.double({ min: 0.05, max: 50, noNaN: true }),
          mastTopM: between(0, 150),
        }),
        (outline) => {
          expect(saveProject(newProject(outline)).ok).toBe(true);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('has a ledger with the first fittings offered', () => {
    const blank = newProject({ name: 'Own', lengthM: 11, beamM: 3.6, draughtM: 2.2, mastTopM: 17 });
    const fittings = startingEntryIds.map((id) => {
      const zone = catalogue.find((entry) => entry.id === id)?.zone ?? 'hull';
      return fittingFromCatalogue(id, blank.boat, suggestedZoneId(zone, blank.zones) ?? '', id);
    });
    const answer = projectLedger(
      { ...blank, fittings },
      { basis: { kind: 'condition', conditionId: 'upwind' }, planId: null, againstPlanId: null },
    );
    if (!answer.ok) throw new Error('no ledger');
    const inTheWind = answer.ledger.rows.filter(({ before }) => before.outcome.airPowerW > 0);
    expect(inTheWind).toHaveLength(startingEntryIds.length);
    expect(answer.ledger.forces.before.outcome.trackPowerW).toBeGreaterThan(0);
  });
});
