import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { zonePlaces } from '../../../src/project/survey/zoneStretch';
import { inboardM, rowSpacingM } from '../../../src/project/tables/surveyPlace';
import { surveyColumns, surveyKeys } from '../../../src/project/tables/surveyColumns';
import { surveyShapes } from '../../../src/project/tables/surveyWords';

const page = readFileSync('docs/tables.md', 'utf8');

describe('the page about the tables', () => {
  it('has every column in its order, with its unit', () => {
    const rows = [...page.matchAll(/^\| `([^`]+)`\s*\|\s*(\S*)\s*\|/gm)].map(([, label, unit]) => [
      label,
      unit,
    ]);
    expect(rows).toEqual(surveyKeys.map((key) => [surveyColumns[key].label, surveyColumns[key].unit ?? '']));
  });

  it('has every word for a shape', () => {
    expect(surveyShapes.filter(({ word }) => !page.includes(`\`${word}\``))).toEqual([]);
  });

  it('states the defaults of the zones, rows and the deck edge', () => {
    const fractions = Object.values(zonePlaces).flatMap(({ partOfLength }) =>
      partOfLength === 'mast'
        ? []
        : [`${Math.round(partOfLength[0] * 100)} to ${Math.round(partOfLength[1] * 100)} %`],
    );
    const stated = [
      ...fractions,
      `${rowSpacingM.decks} m apart`,
      `${rowSpacingM.elsewhere} m elsewhere`,
      `${inboardM} m in`,
    ];
    expect(stated.filter((words) => !page.includes(words))).toEqual([]);
  });
});
