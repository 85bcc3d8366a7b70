import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/project/file/schema';
import { importSurvey } from '../../../src/project/tables/importSurvey';
import { suggestMapping } from '../../../src/project/tables/mapColumns';
import { isPhoto, joinPhoto, splitPhoto } from '../../../src/project/tables/photoNote';
import { surveyCsv, surveyTemplateCsv } from '../../../src/project/tables/surveyCsv';
import { arbitraryProject } from '../file/arbitraryProject';
import { cellsThatRun, hostileName, hostileText } from './hostileTexts';
import { demo, emptyBoat, rowsOf, tableIn } from './support';

function replacedAll(project: Project, csv: string): Project {
  const answer = importSurvey(project, rowsOf(csv, project, { decisionForAll: 'replace' }));
  if ('refused' in answer) throw new Error(answer.refused.message);
  return answer.project;
}

/** The project with hostile names and notes, which the file may hold. */
const hostileProject: fc.Arbitrary<Project> = fc
  .tuple(arbitraryProject, fc.array(hostileName, { minLength: 1 }), fc.array(hostileText, { minLength: 1 }))
  .map(([project, names, notes]) => ({
    ...project,
    zones: project.zones.map((zone, i) => ({ ...zone, name: names[i % names.length] ?? 'x' })),
    fittings: project.fittings.map((fitting, i) => ({
      ...fitting,
      name: names[(i + 1) % names.length] ?? 'x',
      note: (notes[i % notes.length] ?? '').replace(
        /(?![\n\r\t])[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/gu,
        '',
      ),
    })),
  }));

describe('a survey that goes out and comes in again', () => {
  it('unchanged changes nothing: the project is the very same', () => {
    expect(replacedAll(demo(), surveyCsv(demo()))).toEqual(demo());
    fc.assert(
      fc.property(arbitraryProject, (project) => {
        const rows = rowsOf(surveyCsv(project), project, { decisionForAll: 'replace' });
        expect(rows.filter(({ state }) => state !== 'good')).toEqual([]);
        expect(replacedAll(project, surveyCsv(project))).toBe(project);
      }),
      { numRuns: 100 },
    );
  });

  it('changes nothing whatever its names and notes are', () => {
    fc.assert(
      fc.property(hostileProject, (project) => {
        expect(replacedAll(project, surveyCsv(project))).toBe(project);
      }),
      { numRuns: 150 },
    );
  });

  it('has no cell that a spreadsheet would run', () => {
    fc.assert(
      fc.property(hostileProject, (project) => {
        expect(cellsThatRun(surveyCsv(project))).toEqual([]);
        expect(cellsThatRun(surveyTemplateCsv(project))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('makes the same fittings on another project of the same boat, once they are as a survey makes them', () => {
    const size = fc.integer({ min: 1, max: 900 });
    const row = fc.record({
      item: hostileName,
      shape: fc.constantFrom('tube', 'wire', 'rope', 'rod', '7x19', 'ball', 'box', 'net', 'oval', 'fairing'),
      zone: fc.constantFrom('Bow', 'Stern', 'Side decks', 'Masthead', 'New zone', ''),
      widthMm: size,
      lengthMm: size,
      thickShare: fc.integer({ min: 1, max: 10 }),
      side: fc.constantFrom('port', 'starboard', 'centreline', 'both', ''),
      lies: fc.constantFrom('upright', 'fore and aft', 'athwart', ''),
      count: fc.constantFrom('', '1', '2', '7'),
      photo: fc.constantFrom('', '12', 'IMG_2041.jpg'),
      basis: fc.constantFrom('measured', 'drawing', 'estimated', ''),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        const head =
          'Item\tShape\tZone\tWidth (mm)\tLength (m)\tThickness (mm)\tSide\tLies\tCount\tPhoto\tMeasured or estimated';
        const lines = rows.map((each) =>
          [
            `"${each.item.replaceAll('"', '""')}"`,
            each.shape,
            each.zone,
            each.widthMm,
            each.lengthMm / 100,
            (each.widthMm * each.thickShare) / 100,
            each.side,
            each.lies,
            each.count,
            each.photo,
            each.basis,
          ].join('\t'),
        );
        const first = importSurvey(emptyBoat(), rowsOf([head, ...lines].join('\n')));
        if ('refused' in first) throw new Error(first.refused.message);
        const back = importSurvey(emptyBoat(), rowsOf(surveyCsv(first.project)));
        if ('refused' in back) throw new Error(back.refused.message);
        expect(rowsAsWritten(back.project)).toEqual(rowsAsWritten(first.project));
      }),
      { numRuns: 150 },
    );
  });
});

/** The records of a project's survey. */
function rowsAsWritten(project: Project): readonly (readonly string[])[] {
  return tableIn(surveyCsv(project)).records.map(({ cells }) => cells);
}

describe('the template', () => {
  it('has the usual items and blank lines under every zone of the project, and asks nothing', () => {
    const csv = surveyTemplateCsv(emptyBoat());
    const table = tableIn(csv);
    const mapping = suggestMapping(table);
    expect(mapping.columns.every(({ key }) => key !== null)).toBe(true);
    const rows = rowsOf(csv);
    expect(rows.every(({ state }) => state === 'unfilled')).toBe(true);
    const named = rows.filter(({ texts }) => texts.item !== '').map(({ texts }) => texts.zone);
    expect(new Set(named)).toEqual(new Set(emptyBoat().zones.map(({ name }) => name)));
    expect(rows.some(({ texts }) => texts.item === 'Stanchions' && texts.shape === 'round bar')).toBe(true);
  });
});

describe('a photo number', () => {
  it('stands at the head of the note and is found again', () => {
    fc.assert(
      fc.property(
        hostileText.filter((text) => text !== '' && isPhoto(text)),
        hostileText,
        (photo, note) => {
          expect(splitPhoto(joinPhoto({ photo, note }))).toEqual({ photo, note });
        },
      ),
    );
    expect(splitPhoto('Photo 12. bent')).toEqual({ photo: '12', note: 'bent' });
    expect(splitPhoto('Photograph later')).toEqual({ photo: '', note: 'Photograph later' });
    expect([isPhoto('IMG_1.jpg'), isPhoto('a. b'), isPhoto('a.'), isPhoto(' a')]).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
});
