import { stationsIn, zoneKindOf, zoneStretch } from '../../../src/project/survey/zoneStretch';
import { describe, expect, it } from 'vitest';
import type { ProjectFitting } from '../../../src/project/file/schema';
import { importSurvey, newZoneNames } from '../../../src/project/tables/importSurvey';
import { noEdits, surveyReader, type SurveyRow } from '../../../src/project/tables/readSurvey';
import { suggestMapping } from '../../../src/project/tables/mapColumns';
import { fiveThousandRows } from '../../data/tables/fiveThousandRows';
import { demo, emptyBoat, rowsOf, tableIn, tableText } from './support';

const heads =
  'Item;Zone;Shape;Width or diameter (mm);Length (m);Thickness (mm);Height above deck (m);Aft of stem (m);Side;Lies;Count;Photo;Measured or estimated;Note';

function only(line: string): SurveyRow {
  const [row] = rowsOf(`${heads}\n${line}\n`);
  if (row === undefined) throw new Error('no row');
  return row;
}

function fittingOf(line: string): ProjectFitting {
  const { built, errors } = only(line);
  if (built === null) throw new Error(JSON.stringify(errors));
  return built.fitting;
}

describe('a row of a survey', () => {
  it('becomes a taped fitting, measured where it says so', () => {
    expect(fittingOf('Crutch;Bow;tube;40;1,5;;0;2,25;stbd;upright;1;IMG 7;measured;bent')).toMatchObject({
      name: 'Crutch',
      zoneId: 'bow',
      note: 'Photo IMG 7. bent',
      shape: { kind: 'roundBar', diameter: { m: 0.04, basis: 'measured' }, ends: ['surface', 'free'] },
      placement: {
        kind: 'taped',
        aftOfStemM: 2.25,
        side: 'starboard',
        athwart: { from: 'deck-edge', inboardOrOutM: 0.05 },
        aboveDeckM: 0,
        lengthM: 1.5,
        leanAftDeg: 0,
        leanOutDeg: 0,
        basis: 'measured',
        row: null,
        pair: false,
      },
    });
  });

  it.each([
    ['wire', { kind: 'wire', construction: 'spiralStrand' }],
    ['rope', { kind: 'wire', construction: 'braidedRope' }],
    ['oval', { kind: 'ellipticalBar', chord: { m: 0.06 }, thickness: { m: 0.03 } }],
    ['flat bar', { kind: 'rectangularBar', chord: { m: 0.06 }, thickness: { m: 0.03 } }],
    ['fairing', { kind: 'fairing', chord: { m: 0.06 }, direction: { kind: 'fixed', angleDeg: 0 } }],
    ['sphere', { kind: 'sphere', diameter: { m: 0.06 } }],
    ['box', { kind: 'bluffBody', length: { m: 2 }, width: { m: 0.06 }, height: { m: 0.03 } }],
    ['net', { kind: 'net', width: { m: 0.06 }, height: { m: 2 }, wireDiameter: { m: 0.03 } }],
  ])('knows the shape %j', (word, shape) => {
    expect(fittingOf(`Thing;Bow;${word};60;2;30;0,5;1;port;;;;;`).shape).toMatchObject(shape);
  });

  it('lays bars fore and aft, and across from both ways', () => {
    const across = fittingOf('Bar;Bow;tube;30;2;;0,5;1;centre;across;;;;').placement;
    expect(across).toMatchObject({ leanOutDeg: 90, athwart: { from: 'centreline', inboardOrOutM: -1 } });
    expect(fittingOf('Bar;Bow;tube;30;2;;0,5;1;port;across;;;;').placement).toMatchObject({
      leanOutDeg: -90,
    });
    expect(fittingOf('Bar;Bow;tube;30;2;;0,5;1;port;fore and aft;;;;').placement).toMatchObject({
      leanAftDeg: 90,
    });
  });

  it('stands a count in a row at the usual spacing, up to the stern', () => {
    expect(fittingOf('Post;Side decks;tube;25;0,6;;0;2;both;;3;;;').placement).toMatchObject({
      pair: true,
      row: { count: 3, lastAftOfStemM: 6 },
    });
    expect(fittingOf('Post;Side decks;tube;25;0,6;;0;2;both;;30;;;').placement).toMatchObject({
      row: { count: 30, lastAftOfStemM: 12 },
    });
  });

  it.each([1, 5])(
    'puts what was not taped where the quick entry puts it, zone by zone: %d of them',
    (count) => {
      const project = emptyBoat();
      for (const zone of project.zones) {
        const stretch = zoneStretch(project.boat, zoneKindOf(zone));
        const { placement } = fittingOf(`Thing;${zone.name};tube;25;0,6;;;;;;${count};;;`);
        const { fromAftM, toAftM } = stationsIn(stretch, count);
        expect(placement).toMatchObject({
          aftOfStemM: fromAftM,
          aboveDeckM: stretch.standsAboveDeckM,
          row: count === 1 ? null : { count, lastAftOfStemM: toAftM },
        });
      }
    },
  );

  it('takes what it leaves blank from its zone, as an estimate, and says so in the note', () => {
    const fitting = fittingOf('Lamp;Masthead;tube;30;0,4;;;;;;;;measured;');
    expect(fitting.placement).toMatchObject({ basis: 'estimated', side: 'centreline', aftOfStemM: 4.92 });
    expect(fitting.note).toBe(
      'Not in the survey, assumed: aft of stem, height above deck, side, how it lies.',
    );
  });

  it('takes flags, sizes and place of an item of the catalogue from there, unless the row says other', () => {
    const fitting = fittingOf('stanchions;;;27;;;;;;;;;measured;');
    expect(fitting).toMatchObject({
      zoneId: 'decks',
      flags: { safetyRequired: true },
      shape: { diameter: { m: 0.027, basis: 'measured' } },
      placement: { row: { count: 6 }, pair: true, basis: 'estimated' },
    });
    expect(fittingOf('Stanchions;;box;300;1;200;;;;;;;;').shape.kind).toBe('bluffBody');
  });

  it.each([
    ['Stanchion 3, port', true],
    ['GUARD-WIRES aft', true],
    ['Jackline', true],
    ['Nav. light', true],
    ['Grab rail', true],
    ['Pole', false],
    ['Outstanchion', false],
  ])('called %j is safety-required: %j', (name, isRequired) => {
    expect(fittingOf(`${name};Bow;tube;30;1`).flags.safetyRequired).toBe(isRequired);
  });

  it.each([
    ['Pole;Bow;tube;;2', { width: 'A round bar needs its diameter.' }],
    ['Pole;Bow;prism;30;2', { shape: '"prism" is not known here; use round bar, wire,' }],
    ['Pole;Bow;;30;2', { shape: 'Say what it is: round bar, wire,' }],
    [';Bow;tube;30;2', { item: 'Name the item.' }],
    ['Pole;Bow;tube;30 kg;2', { width: '"kg" makes this a mass' }],
    ['Pole;Bow;tube;-30;2', { width: 'must be a number from 0.0001 to 200; it is -0.03 (in m)' }],
    ['Pole;Bow;tube;30;0', { length: 'must be at least 0.001 for a bar; it is 0 (in m)' }],
    ['Pole;Bow;oval;30;2;40', { thickness: 'must not be above the chord' }],
    ['Pole;Bow;tube;30;2;;0;1;left or so', { side: '"left or so" is not known here; use centreline, port' }],
    ['Pole;Bow;tube;30;2;;0;1;port;;2.5', { count: 'A count is a whole number from 1 to 500' }],
    ['Pole;Bow;tube;30;2;;0;1;port;;;a. b', { photo: 'A photo is named in one line' }],
    ['Pole;Bow;tube;30;2;;0;1;both;;;;perhaps', { basis: '"perhaps" is not known here' }],
    [
      'Pole;Bow;;abc;2;;0;1;port;;0',
      {
        shape: 'Say what it is: round bar',
        width: '"abc" does not start with a number',
        count: 'whole number',
      },
    ],
    ['Pole;Bow;tube;;abc', { width: 'A round bar needs its diameter.', length: '"abc" does not start' }],
    ['Pole;Bow;tube;30;2;;0;1.234.5', { aftOfStem: 'can be read in more than one way' }],
  ])('%j has its error at its cell', (line, expected) => {
    const { state, errors } = only(line);
    expect([state, Object.keys(errors)]).toEqual(['bad', Object.keys(expected)]);
    for (const [key, words] of Object.entries(expected)) {
      expect((errors as Record<string, string>)[key]).toContain(words);
    }
  });

  it('that was printed in the template and not filled counts as unfilled, not as bad', () => {
    expect(only('Bowsprit;Bow;round bar').state).toBe('unfilled');
    expect(only('Bowsprit;Bow;round bar;110').state).toBe('good');
  });

  it('shows markup and formulas of its table as the text that they are', () => {
    const rows = rowsOf(tableText('hostile.csv'));
    expect(rows.map(({ state }) => state)).toEqual(['good', 'good', 'good', 'good', 'good']);
    expect(rows.map(({ built }) => built?.fitting.name)).toEqual([
      '=HYPERLINK("http://x.invalid","y")',
      '+1+1',
      '-5 things',
      '@SUM(A1)',
      '=4+4',
    ]);
  });
});

describe('a row whose name is in the ledger', () => {
  const table = 'Item;Zone;Shape;Diameter (mm);Length (m)\nBoom vang;Bow;tube;50;1\n';
  const first = rowsOf(table, emptyBoat());
  const added = importSurvey(emptyBoat(), first);
  if ('refused' in added) throw new Error(added.refused.message);
  const { project } = added;

  it('is asked about, and goes in only with an answer', () => {
    const [row] = rowsOf(table, project);
    expect([row?.state, row?.namesake?.name]).toEqual(['asks', 'Boom vang']);
    const imported = importSurvey(project, rowsOf(table, project));
    expect('refused' in imported ? null : imported.project).toBe(project);
  });

  it('is added as another, replaces it, or is skipped', () => {
    const wider = table.replace('50', '60');
    const namesAfter = (decision: 'add' | 'replace' | 'skip'): unknown => {
      const answer = importSurvey(project, rowsOf(wider, project, { decisionForAll: decision }));
      if ('refused' in answer) throw new Error(answer.refused.message);
      return answer.project.fittings.map(({ shape }) => 'diameter' in shape && shape.diameter.m);
    };
    expect(namesAfter('add')).toEqual([0.05, 0.06]);
    expect(namesAfter('replace')).toEqual([0.06]);
    expect(namesAfter('skip')).toEqual([0.05]);
  });

  it('replaces only what it says: the rest of the fitting stays', () => {
    const boat = demo();
    const old = boat.fittings.find(({ name }) => name === 'Pulpit rails');
    const text = 'Item;Diameter (mm)\nPulpit rails;30\n';
    const [row] = rowsOf(text, boat, { decisionForAll: 'replace' });
    if (old?.shape.kind !== 'roundBar') throw new Error('the demo has changed');
    expect(row?.built?.fitting).toEqual({
      ...old,
      shape: { ...old.shape, diameter: { m: 0.03, basis: 'estimated' } },
    });
  });

  it('is about the second fitting of that name where it is the second row of it', () => {
    const twice = importSurvey(project, rowsOf(table, project, { decisionForAll: 'add' }));
    if ('refused' in twice) throw new Error(twice.refused.message);
    const rows = rowsOf(`${table}boom vang;Bow;tube;60;1\nBoom vang;Bow;tube;70;1\n`, twice.project);
    expect(rows.map(({ namesake }) => namesake?.id ?? null)).toEqual(['f1', 'f2', null]);
  });
});

describe('an import', () => {
  it('puts rows after the last of their zone, makes zones that are not there, and is one edit', () => {
    const text = 'Item;Zone;Shape;Diameter (mm)\nA;Stern;ball;50\nB;Foredeck;ball;50\nC;foredeck;ball;50\n';
    const rows = rowsOf(text);
    expect(newZoneNames(rows)).toEqual(['Foredeck']);
    const answer = importSurvey(emptyBoat(), rows);
    if ('refused' in answer) throw new Error(answer.refused.message);
    expect(answer.project.zones.at(-1)).toEqual({ id: 'z9', name: 'Foredeck' });
    expect(answer.project.fittings.map(({ name, zoneId }) => `${name} ${zoneId}`)).toEqual([
      'A stern',
      'B z9',
      'C z9',
    ]);
    expect(answer.newIds).toEqual(['f1', 'f2', 'f3']);
    const more = importSurvey(answer.project, rowsOf('Item;Zone;Shape;Diameter (mm)\nD;Stern;ball;50\n'));
    expect('refused' in more ? [] : more.project.fittings.map(({ name }) => name)).toEqual([
      'A',
      'D',
      'B',
      'C',
    ]);
  });

  it('leaves bad rows out, and takes them once they are mended', () => {
    const table = tableIn(tableText('pasted-tabs.txt'));
    const read = surveyReader(emptyBoat(), table, suggestMapping(table));
    expect(read(noEdits).map(({ state }) => state)).toEqual(['good', 'good', 'good', 'bad']);
    const mended = read({
      ...noEdits,
      texts: new Map([[6, { width: '300', thickness: '20 cm' }]]),
    });
    expect(mended.map(({ state }) => state)).toEqual(['good', 'good', 'good', 'good']);
    expect(read({ ...noEdits, dropped: new Set([6]) })).toHaveLength(3);
  });

  it('of 5000 rows is read, finds each bad one, and is refused in words beyond what a project holds', () => {
    const table = tableIn(fiveThousandRows());
    const read = surveyReader(emptyBoat(), table, suggestMapping(table));
    const rows = read(noEdits);
    expect(rows).toHaveLength(5000);
    expect(rows.filter(({ state }) => state === 'bad').map(({ number }) => number)).toEqual(
      Array.from({ length: 100 }, (_, i) => 50 * i + 51),
    );
    const again = read({ ...noEdits, texts: new Map([[51, { width: '9' }]]) });
    expect(again.filter((row, i) => row !== rows[i]).map(({ number, state }) => [number, state])).toEqual([
      [51, 'good'],
    ]);
    const answer = importSurvey(emptyBoat(), rows);
    expect('refused' in answer ? answer.refused.message : '').toBe(
      'a project holds at most 2000 fittings: this one has 0, and 4900 rows would be added; there is room for 2000 rows. Drop some rows, or bring the rest into another project',
    );
  });

  it.each(['\t', ' ', '(', '"', "'", ',', '1', '.', '1,', '=', ' in ', '\r\n', 'Photo .', ' (mm'])(
    'takes no longer than its length asks for a cell of nothing but %j',
    (piece) => {
      const long = piece.repeat(Math.floor(100_000 / piece.length)).replaceAll('"', '""');
      const line = `"a${long}"\ttube\t"1${long}"`;
      const started = performance.now();
      expect(rowsOf(`Item\tShape\tLength (m)\n${line}`)[0]?.state).toBe('bad');
      expect(rowsOf(`${line}\nItem\tShape\n${line}`).length).toBeGreaterThan(0);
      expect(performance.now() - started).toBeLessThan(5000);
    },
  );
});
