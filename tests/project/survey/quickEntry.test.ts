import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magnitude } from '../../../src/physics/vector/vector3';
import { newProject } from '../../../src/project/catalogue/newProject';
import { freeboardAt } from '../../../src/physics/placement/deckLine';
import { asSailed } from '../../../src/project/core/fittingState';
import { deckLineOf, fittingToPhysics, membersOf } from '../../../src/project/core/fittingToPhysics';
import { blankProject } from '../../../src/project/file/blankParts';
import { openProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project, ProjectFitting, ProjectZone } from '../../../src/project/file/schema';
import {
  addQuickEntry,
  quickFieldOfPath,
  quickPlaceText,
  quickZone,
} from '../../../src/project/survey/addQuickEntry';
import {
  quickFieldsOf,
  quickLies,
  quickSides,
  readQuickEntry,
  type QuickChoices,
  type QuickEntry,
  type QuickTexts,
} from '../../../src/project/survey/quickEntry';
import { quickShapes } from '../../../src/project/survey/quickShapes';

const units = { size: 'mm', length: 'm' } as const;
const choices: QuickChoices = {
  shape: 'tube',
  zoneId: 'decks',
  side: 'centreline',
  lie: 'upright',
  basis: 'measured',
};
const boat = { name: 'Marrow', lengthM: 12, beamM: 4, draughtM: 2.3, mastTopM: 18 };
const project = newProject(boat);

function entryOf(texts: QuickTexts, change: Partial<QuickChoices> = {}): QuickEntry {
  const reading = readQuickEntry(texts, { ...choices, ...change }, units);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return reading.entry;
}

function added(entry: QuickEntry, to: Project = project): ProjectFitting {
  const answer = addQuickEntry(to, entry);
  if ('refused' in answer) throw new Error(`${answer.refused.path} ${answer.refused.message}`);
  const fitting = answer.project.fittings.find(({ id }) => id === answer.newIds?.[0]);
  if (fitting === undefined) throw new Error('nothing was added');
  return fitting;
}

function membersIn(fitting: ProjectFitting) {
  return membersOf(fitting.placement, deckLineOf(project.boat));
}

const stanchion = { name: 'Stanchion', diameter: '25', length: '0,62' };

describe('reading what was typed', () => {
  it('takes millimetres for sizes and metres for lengths, and any unit that is typed', () => {
    const bare = entryOf(stanchion);
    expect(bare.sizesM).toEqual({ diameter: 0.025 });
    expect(bare.lengthM).toBe(0.62);
    const typed = entryOf({ ...stanchion, diameter: '1 in', length: '62cm', height: '-50 mm', count: '3' });
    expect(typed.sizesM.diameter).toBeCloseTo(0.0254, 12);
    expect([typed.lengthM, typed.heightM, typed.count]).toEqual([0.62, -0.05, 3]);
  });

  it('complains of every field that cannot be taken, each in its own words', () => {
    const reading = readQuickEntry(
      { diameter: '25 kn', length: 'long', count: '2.5', height: '900' },
      choices,
      units,
    );
    expect(reading).toEqual({
      ok: false,
      errors: {
        name: 'Type a name.',
        diameter: expect.stringContaining('"kn" makes this a speed') as string,
        length: expect.stringContaining('does not start with a number') as string,
        count: '“2.5” is not a whole number from 1 to 500.',
        height: '“900” is not in the range from −20 m to 150 m.',
      },
    });
  });

  it.each(quickShapes)('asks for all the sizes of a %s, and for none of another', (shape) => {
    const reading = readQuickEntry({}, { ...choices, shape }, units);
    const optional = ['count', 'height'];
    expect(reading.ok ? [] : Object.keys(reading.errors)).toEqual(
      quickFieldsOf(shape).filter((field) => !optional.includes(field)),
    );
  });

  it('never throws, whatever is typed', () => {
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.constantFrom('1e9', '-0', '1/0', '½', '0,1'),
    );
    const texts = fc.record({ name: text, diameter: text, length: text, count: text, height: text });
    fc.assert(
      fc.property(texts, (typed) => {
        const reading = readQuickEntry(typed, choices, units);
        expect(reading.ok || Object.keys(reading.errors).length > 0).toBe(true);
      }),
    );
  });

  it('a name that no project may hold is refused, and the refusal is about the name', () => {
    const name = fc.string({ unit: 'binary', maxLength: 300 }).filter((text) => text.trim() !== '');
    fc.assert(
      fc.property(name, (typed) => {
        const answer = addQuickEntry(project, entryOf({ ...stanchion, name: typed }));
        if ('refused' in answer) expect(quickFieldOfPath(answer.refused.path)).toBe('name');
        else expect(answer.project.fittings.map((fitting) => fitting.name)).toContain(typed.trim());
      }),
    );
    const hostile = addQuickEntry(project, entryOf({ ...stanchion, name: 'Pole\u202Egnorw' }));
    expect('refused' in hostile && quickFieldOfPath(hostile.refused.path)).toBe('name');
  });
});

describe('what a quick entry becomes', () => {
  it('a tube with its size as it was obtained, and a place that is said to be estimated', () => {
    const fitting = added(entryOf(stanchion));
    expect(fitting).toMatchObject({
      name: 'Stanchion',
      zoneId: 'decks',
      shape: { kind: 'roundBar', diameter: { m: 0.025, basis: 'measured' }, ends: ['surface', 'free'] },
      placement: { kind: 'taped', aboveDeckM: 0, lengthM: 0.62, basis: 'estimated', row: null, pair: false },
    });
    expect(fitting.note).toContain('estimated from the zone');
    const guessed = added(entryOf(stanchion, { basis: 'estimated' })).shape;
    expect(guessed).toMatchObject({ diameter: { m: 0.025, basis: 'estimated' } });
  });

  it('several are a row, equally spaced along the zone, on both edges twice as many', () => {
    const row = membersIn(added(entryOf({ ...stanchion, count: '7' }, { side: 'starboard' })));
    expect(row).toHaveLength(7);
    const stations = row.map(({ start }) => start[0]);
    const steps = stations.slice(1).map((x, i) => (stations[i] ?? 0) - x);
    for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 9);
    expect((stations[0] ?? 0) - (stations[6] ?? 0)).toBeCloseTo(0.7 * boat.lengthM, 2);
    expect(row.every(({ start }) => start[1] < -0.5)).toBe(true);
    const both = membersIn(added(entryOf({ ...stanchion, count: '7' }, { side: 'both' })));
    expect(both).toHaveLength(14);
    expect(both.reduce((sum, { start }) => sum + start[1], 0)).toBeCloseTo(0, 9);
  });

  it('a bar that lies along or across keeps its length and its middle', () => {
    const middles = quickLies.map((lie) => {
      const [member] = membersIn(added(entryOf({ ...stanchion, length: '3' }, { lie })));
      if (member === undefined) throw new Error('no member');
      const { start, end } = member;
      expect(magnitude([end[0] - start[0], end[1] - start[1], end[2] - start[2]])).toBeCloseTo(3, 9);
      return [start[0] + end[0], start[1] + end[1]].map((sum) => sum / 2);
    });
    for (const [x = NaN, y = NaN] of middles) {
      expect(x).toBeCloseTo(middles[0]?.[0] ?? 0, 9);
      expect(y).toBeCloseTo(0, 9);
    }
  });

  it('a ball without a height has its middle half its size above the deck, a box its foot on it', () => {
    const ball = added(entryOf({ name: 'Dome', diameter: '600' }, { shape: 'ball' }));
    expect(ball).toMatchObject({ shape: { kind: 'sphere' }, placement: { aboveDeckM: 0.3, lengthM: 0 } });
    const sides = { foreAndAft: '900', across: '500', high: '400' };
    const box = added(entryOf({ name: 'Sail bag', ...sides }, { shape: 'box' }));
    expect(box).toMatchObject({
      shape: { kind: 'bluffBody', length: { m: 0.9 }, width: { m: 0.5 }, height: { m: 0.4 } },
      placement: { aboveDeckM: 0, lengthM: 0 },
    });
    const [member] = fittingToPhysics(asSailed(box), deckLineOf(project.boat)).members;
    const deckM = freeboardAt(deckLineOf(project.boat), 0.52 * boat.lengthM);
    expect(member?.start[2]).toBeCloseTo(deckM, 9);
    expect(member?.end[2]).toBeCloseTo(deckM + 0.4, 9);
    const lifted = added(entryOf({ name: 'Sail bag', ...sides, height: '1.5' }, { shape: 'box' }));
    expect(lifted.placement).toMatchObject({ aboveDeckM: 1.5 });
  });

  it('at the masthead it stands on the mast’s top', () => {
    const [aerial] = membersIn(added(entryOf({ ...stanchion, length: '1' }, { zoneId: 'masthead' })));
    expect(aerial?.start[2]).toBeCloseTo(boat.mastTopM, 1);
    expect(aerial?.end[2]).toBeCloseTo(boat.mastTopM + 1, 1);
  });

  it('comes after the last of its zone, with a number where the name is taken', () => {
    const once = addQuickEntry(project, entryOf(stanchion));
    if ('refused' in once) throw new Error('refused');
    expect(added(entryOf(stanchion), once.project).name).toBe('Stanchion 2');
  });

  it('makes a zone where a project has none, and takes the first where the chosen one is gone', () => {
    const answer = addQuickEntry(blankProject({ zones: [] }), entryOf(stanchion));
    if ('refused' in answer) throw new Error('refused');
    expect(answer.project.zones).toHaveLength(1);
    expect(answer.project.fittings[0]?.zoneId).toBe(answer.project.zones[0]?.id);
    expect(quickZone(project, 'gone')?.id).toBe(project.zones[0]?.id);
  });

  it('whatever shape, side, lie and zone: the project is saved and opens as it was', () => {
    const texts = Object.fromEntries(quickShapes.flatMap(quickFieldsOf).map((field) => [field, '2']));
    for (const shape of quickShapes) {
      for (const side of quickSides) {
        for (const lie of quickLies) {
          for (const { id: zoneId } of project.zones) {
            const answer = addQuickEntry(project, entryOf(texts, { shape, side, lie, zoneId }));
            if ('refused' in answer) throw new Error(`${answer.refused.path} ${answer.refused.message}`);
            const saved = saveProject(answer.project);
            if (!saved.ok) throw new Error(saved.errors[0]?.message);
            expect(openProject(saved.text)).toMatchObject({ ok: true, project: answer.project });
          }
        }
      }
    }
  });
});

describe('the place that the form tells', () => {
  // Printed numbers keep to their units by spaces that do not break.
  const told = (zone: ProjectZone | undefined, count: number) =>
    quickPlaceText(project, zone, count).replace(/\s/g, ' ');
  const zoneOf = (id: string) => project.zones.find((zone) => zone.id === id);
  it.each([
    ['decks', 1, 'It is put 6.24 m aft of the stem, estimated'],
    ['decks', 7, 'They are spread equally 2.0–10.4 m aft of the stem, estimated'],
    ['rig', 3, 'All are put 4.92 m aft of the stem, estimated'],
  ])('%s, %d', (zoneId, count, words) => {
    expect(told(zoneOf(zoneId), count)).toContain(words);
  });

  it('knows a zone by the words of its name', () => {
    const text = (name: string) => told({ id: 'z1', name }, 1);
    expect(text('Foredeck')).toBe(told(zoneOf('bow'), 1));
    expect(text('Mast and boom')).toBe(told(zoneOf('rig'), 1));
    expect(text('Cockpit and stern')).toBe(told(zoneOf('cockpit'), 1));
    expect(text('Odds and ends')).toBe(told(zoneOf('decks'), 1));
  });
});
