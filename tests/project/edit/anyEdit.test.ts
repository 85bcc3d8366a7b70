import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project, ProjectFitting } from '../../../src/project/file/schema';
import { patchFitting } from '../../../src/project/edit/fittingEdits';
import { patched, type Patch } from '../../../src/project/edit/patch';
import { anyEdit, edits, frozen, opened, run } from './anyEdit';

type FittingFields = Omit<ProjectFitting, 'id'>;
type FittingPatch = Patch<FittingFields>;

/** Time for a machine with other work, ms. */
const patience = 60_000;

describe('any edit', { timeout: patience }, () => {
  it('leaves a project that opens, in the words of the file, and never changes the one it was given', () => {
    const done = new Map<string, number>();
    const messages: string[] = [];
    fc.assert(
      fc.property(opened, fc.array(anyEdit, { minLength: 1, maxLength: 12 }), (first, sequence) => {
        let project: Project = frozen(first);
        for (const step of sequence) {
          const answer = run(project, step);
          if ('refused' in answer) continue;
          if (answer.message !== undefined) messages.push(answer.message);
          if (answer.project === project) continue;
          done.set(step.name, (done.get(step.name) ?? 0) + 1);
          const checked = checkProject(answer.project);
          expect(checked).toEqual({ ok: true, value: answer.project });
          expect(saveProject(answer.project)).toMatchObject({
            text: `${JSON.stringify(answer.project, null, 2)}\n`,
          });
          project = frozen(answer.project);
        }
      }),
      // Seeded, because it also counts that each edit came to be done.
      { numRuns: 700, seed: 11 },
    );
    const neverDone = Object.keys(edits).filter((name) => !done.has(name));
    expect(neverDone).toEqual(['blankName']);
    expect(messages.length).toBeGreaterThan(0);
    expect(messages.every((message) => /^[A-Z].*\.$/.test(message))).toBe(true);
  });

  const patches: fc.Arbitrary<FittingPatch> = fc.oneof(
    fc.record({ massKg: fc.constantFrom(-1, 0, 3, 2e6, NaN, Infinity) }),
    fc.record({ name: fc.constantFrom('', 'Pole', 'two\nlines', 'x'.repeat(201)) }),
    fc.record({ zoneId: fc.constantFrom('z0', 'nobody', 'not an id', '__proto__') }),
    fc.record({ shelteredByFittingId: fc.constantFrom('f0', 'f1', 'nobody', null) }),
    fc.record({ exposure: fc.record({ best: fc.constantFrom(0, 0.5, 1.4, 2), low: fc.constant(0.4) }) }),
    fc.record({ placement: fc.record({ pair: fc.boolean(), row: fc.constantFrom(null, { count: 1 }) }) }),
    fc.record({ shape: fc.record({ diameter: fc.record({ m: fc.constantFrom(0, 0.00011, 0.03, 201) }) }) }),
    fc.record({
      dutyFraction: fc.record({ byCondition: fc.constant([{ conditionId: 'c9', fraction: 1 }]) }),
    }),
  );

  it('is refused exactly when opening the outcome would be, at a field and in words of the same list', () => {
    let refusedCount = 0;
    let doneCount = 0;
    fc.assert(
      fc.property(opened, patches, (project, patch) => {
        const [first] = project.fittings;
        if (first === undefined) return;
        const answer = patchFitting(project, first.id, patch);
        const whole = checkProject({
          ...project,
          fittings: [patched<FittingFields>(first, patch), ...project.fittings.slice(1)],
        });
        expect('refused' in answer).toBe(!whole.ok);
        if ('refused' in answer && !whole.ok) {
          expect(whole.errors).toContainEqual(answer.refused);
          refusedCount += 1;
        } else if (whole.ok) {
          expect(answer).toEqual({ project: whole.value });
          doneCount += 1;
        }
      }),
      { numRuns: 400 },
    );
    expect(Math.min(refusedCount, doneCount)).toBeGreaterThan(30);
  });
});
