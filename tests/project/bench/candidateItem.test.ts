import { describe, expect, it } from 'vitest';
import { benchMembers, typedMember, typedMemberProblems } from '../../../src/project/bench/benchMember';
import { candidateProblems, startCandidate, type Candidate } from '../../../src/project/bench/candidates';
import { addCandidateItem } from '../../../src/project/bench/candidateItem';
import { openProject } from '../../../src/project/file/openProject';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project } from '../../../src/project/file/schema';
import { demoPath, projectAt } from '../../properties/projects';
import { manyCandidates, memberNamed } from './support';

const project = projectAt(demoPath);
const pole = memberNamed(project, 'Stern pole');
const [first] = project.conditions;
const basis = { kind: 'condition', conditionId: first?.id ?? '' } as const;

function used(candidate: Candidate, planId: string | null = null) {
  const answer = addCandidateItem(project, { member: pole, candidate, planId, basis });
  if ('refused' in answer) throw new Error(answer.refused.message);

  const plan =
    planId === null ? answer.project.plans.at(-1) : answer.project.plans.find(({ id }) => id === planId);
  return { answer, plan, item: plan?.items.at(-1) };
}

describe('using a candidate', () => {
  it('makes a plan when none is named, and else the last item of the named one', () => {
    const candidate = manyCandidates(pole)[1] as Candidate;
    const alone = used(candidate);
    expect(alone.answer.project.plans).toHaveLength(project.plans.length + 1);
    expect(alone.answer.newIds).toEqual([alone.plan?.id, alone.item?.id]);
    const [plan] = project.plans;
    const added = used(candidate, plan?.id ?? '');
    expect(added.plan?.items).toHaveLength((plan?.items.length ?? 0) + 1);
    expect(added.answer.newIds).toEqual([added.item?.id]);
    expect(added.item?.fittingId).toBe(pole.fitting.id);
  });

  it('carries mass, place, cost and the flags that go with the candidate', () => {
    const [, turning, fixed, thinner] = manyCandidates(pole) as readonly [
      Candidate,
      Candidate,
      Candidate,
      Candidate,
    ];
    const typed = used({ ...turning, massKg: 3.5, cost: 1200 }).item;
    expect(typed).toMatchObject({
      massChangeKg: 3.5,
      cost: 1200,
      flags: { structural: false, movingPart: true },
    });
    expect(typed?.massPlace).not.toBeNull();
    expect(used(fixed).item?.flags).toMatchObject({ structural: false, movingPart: false });
    const replaced = used({ ...thinner, massKg: 5 }).item;
    expect(replaced?.flags).toMatchObject({ structural: true, movingPart: false });
    expect(replaced?.massChangeKg).toBeCloseTo(5 - (pole.fitting.massKg ?? NaN), 12);
    expect(replaced?.change.kind).toBe('slimmer');
  });

  it('writes its reasoning: sizes, wind, saving, crossings, assumptions', () => {
    const note = used(manyCandidates(pole)[2] as Candidate).item?.note ?? '';
    expect(note).toContain('Fairing, fixed: chord');
    expect(note).toContain(`In ${first?.name ?? '?'} it saves`);
    expect(note).toContain('- drag along the wind:');
    expect(note).toContain('skin 1.00\u00a0mm and clearance 2.00\u00a0mm on each side');
  });

  it('says when the change of mass is not known, and counts none', () => {
    const fitting = { ...pole.fitting, massKg: null };
    const unweighed = {
      ...project,
      fittings: project.fittings.map((one) => (one.id === fitting.id ? fitting : one)),
    };
    const weightless = { fitting, isTyped: false };
    const candidate = startCandidate('section', weightless, 'c');
    const answer = addCandidateItem(unweighed, { member: weightless, candidate, planId: null, basis });
    const item = 'refused' in answer ? undefined : answer.project.plans.at(-1)?.items[0];
    expect(item).toMatchObject({ massChangeKg: 0, massPlace: null });
    expect(item?.note).toContain('Change of mass not known and counted as none');
  });

  it('leaves a project that saves and opens, for every bar and kind, with long and odd names', () => {
    let after: Project = project;
    for (const member of benchMembers(project)) {
      const candidate = {
        ...(manyCandidates(member)[2] as Candidate),
        name: '=HYPERLINK("x")😀'.repeat(10),
      };
      const planId = after.plans.at(-1)?.id ?? null;
      const answer = addCandidateItem(after, { member, candidate, planId, basis: { kind: 'profile' } });
      if ('refused' in answer) throw new Error(answer.refused.message);
      after = answer.project;
    }
    const saved = saveProject(after);
    if (!saved.ok) throw new Error(JSON.stringify(saved));
    expect(openProject(saved.text).ok).toBe(true);
  });

  it('is refused for the member as it stands, a typed member, a problem and an unknown plan', () => {
    const typed = typedMember(project, {
      diameterM: 0.05,
      lengthM: 2,
      footAboveDeckM: 0,
      leanAftDeg: 0,
      leanOutDeg: 0,
      ends: ['free', 'free'],
    });
    const fixed = manyCandidates(pole)[2] as Candidate;
    const bare = startCandidate('bare', pole, 'b');
    const bad = { ...startCandidate('section', pole, 's'), thicknessM: 1 } as Candidate;
    expect(addCandidateItem(project, { member: pole, candidate: bare, planId: null, basis })).toHaveProperty(
      'refused',
    );
    expect(
      addCandidateItem(project, { member: typed, candidate: fixed, planId: null, basis }),
    ).toHaveProperty('refused');
    expect(addCandidateItem(project, { member: pole, candidate: bad, planId: null, basis })).toHaveProperty(
      'refused',
    );
    expect(addCandidateItem(project, { member: pole, candidate: fixed, planId: 'no', basis })).toHaveProperty(
      'refused',
    );
  });
});

describe('problems of a typed member', () => {
  it('stand beside their fields, and a sound one has none', () => {
    const ends = ['free', 'free'] as const;
    const sound = { diameterM: 0.05, lengthM: 2, footAboveDeckM: 0, leanAftDeg: 0, leanOutDeg: 0, ends };
    expect(typedMemberProblems(sound)).toEqual([]);
    const bad = { ...sound, diameterM: 0, lengthM: NaN, leanOutDeg: 181 };
    expect(typedMemberProblems(bad).map(({ field }) => field)).toEqual([
      'diameterM',
      'lengthM',
      'leanOutDeg',
    ]);
  });
});

describe('problems of a candidate', () => {
  const fields = (candidate: Candidate): string[] =>
    candidateProblems(candidate, pole).map(({ field }) => field);

  it('are none at the start, for every bar and kind', () => {
    for (const member of benchMembers(project)) {
      for (const candidate of manyCandidates(member)) {
        expect([member.fitting.name, candidateProblems(candidate, member)]).toEqual([
          member.fitting.name,
          [],
        ]);
      }
    }
  });

  it('stand beside their fields', () => {
    const section = startCandidate('section', pole, 's') as Extract<Candidate, { kind: 'section' }>;
    const fairing = startCandidate('fairingRound', pole, 'f') as Extract<Candidate, { kind: 'fairingRound' }>;
    const thinner = startCandidate('thinnerRound', pole, 't') as Extract<Candidate, { kind: 'thinnerRound' }>;
    expect(fields({ ...section, chordM: NaN })).toEqual(['chordM']);
    expect(fields({ ...section, thicknessM: 0.6 * section.chordM })).toEqual(['thicknessM']);
    expect(fields({ ...section, thicknessM: 2 * section.chordM })).toEqual(['thicknessM']);
    expect(fields({ ...section, direction: { kind: 'fixed', angleDeg: 200 } })).toEqual([
      'direction.angleDeg',
    ]);
    expect(fields({ ...section, mass: { kind: 'wall', material: 'stainless316', wallM: 1 } })).toEqual([
      'mass.wallM',
    ]);
    expect(fields({ ...fairing, clearanceM: -1 })).toContain('clearanceM');
    expect(fields({ ...fairing, chordOverThickness: 1.5 })).toEqual(['chordOverThickness']);
    expect(fields({ ...fairing, direction: { kind: 'turning', residualDeg: 50, pieces: 1.5 } })).toEqual([
      'direction.residualDeg',
      'direction.pieces',
    ]);
    expect(fields({ ...thinner, diameterM: 1 })).toContain('diameterM');
    expect(fields({ ...thinner, name: ' ', massKg: -1, cost: Infinity })).toEqual(['name', 'massKg', 'cost']);
  });
});
