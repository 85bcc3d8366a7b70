import {
  between,
  blankCondition,
  blankFitting,
  blankItem,
  blankPlan,
  blankProject,
  noFlags,
  point,
  roundBar,
} from '../../src/project/file/blankParts';
import type { Project } from '../../src/project/file/schema';
import { saveProject } from '../../src/project/file/saveProject';

const aerial = blankFitting({
  id: 'aerial',
  name: 'Aerial',
  zoneId: 'stern',
  shape: roundBar(0.02),
  placement: between(point(-5, 0, 1.4), point(-5, 0, 3.4)),
});

const pole = blankFitting({
  id: 'pole',
  name: 'Pole',
  zoneId: 'bow',
  shape: roundBar(0.1),
  placement: between(point(3, 0, 1.6), point(3, 0, 4.6)),
  dutyFraction: { default: 0.5, byCondition: [] },
});

const rail = blankFitting({
  id: 'rail',
  name: 'Pulpit',
  zoneId: 'bow',
  shape: roundBar(0.03),
  placement: between(point(5, 0.6, 1.4), point(5, 0.6, 2)),
  flags: { ...noFlags, safetyRequired: true },
});

const house = blankFitting({
  ...aerial,
  id: 'house',
  name: 'Deckhouse',
  excluded: { reason: 'counted with the hull' },
});

const wind = (angleFromCourseDeg: number) => ({
  kind: 'true' as const,
  speedMs: 10,
  heightM: 10,
  angleFromCourseDeg,
});

/** Three fittings and one left out; upwind with the wind ahead, a run that is slower than the wind. */
export const testProject: Project = blankProject({
  name: 'Test ledger',
  currency: 'EUR',
  zones: [
    { id: 'bow', name: 'Bow' },
    { id: 'stern', name: 'Stern' },
  ],
  fittings: [aerial, pole, rail, house],
  conditions: [
    blankCondition({ id: 'up', name: 'Upwind', wind: wind(45), boatSpeedMs: 4, totalResistanceN: 2000 }),
    blankCondition({ id: 'run', name: 'Run', wind: wind(180), boatSpeedMs: 3 }),
  ],
  profile: {
    name: 'Out and home',
    entries: [
      { conditionId: 'up', hours: 3 },
      { conditionId: 'run', hours: 1 },
    ],
  },
  plans: [
    blankPlan({
      id: 'first',
      name: 'First plan',
      items: [
        blankItem({
          id: 'thin',
          name: 'Thinner aerial',
          fittingId: 'aerial',
          massChangeKg: -0.5,
          cost: 120,
          change: { kind: 'slimmer', diameter: { m: 0.01, basis: 'drawing' } },
        }),
        blankItem({ id: 'off', name: 'No pulpit', fittingId: 'rail', change: { kind: 'removed' } }),
        blankItem({
          id: 'gone',
          name: 'No aerial',
          fittingId: 'aerial',
          on: false,
          change: { kind: 'removed' },
        }),
        blankItem({
          id: 'thick',
          name: 'Thicker pole',
          fittingId: 'pole',
          change: { kind: 'slimmer', diameter: { m: 0.2, basis: 'drawing' } },
        }),
      ],
    }),
    blankPlan({
      id: 'second',
      name: 'Second plan',
      items: [blankItem({ id: 'bare', name: 'No pole', fittingId: 'pole', change: { kind: 'removed' } })],
    }),
  ],
});

/** The project with other parts, as the text of its file. */
export function fileText(parts: Partial<Project> = {}): string {
  const saved = saveProject({ ...testProject, ...parts });
  if (!saved.ok) throw new Error(JSON.stringify(saved.errors));
  return saved.text;
}
