import {
  between,
  blankCondition,
  blankFitting,
  blankItem,
  blankPlan,
  blankProject,
  defaultMethods,
  point,
  roundBar,
} from '../../../src/project/file/blankParts';
import { saveProject } from '../../../src/project/file/saveProject';
import type { Project, ProjectShape } from '../../../src/project/file/schema';
import { useAppStore } from '../../../src/state/appStore';

const box: ProjectShape = {
  kind: 'bluffBody',
  length: { m: 1.2, basis: 'measured' },
  width: { m: 0.6, basis: 'drawing' },
  height: { m: 0.5, basis: 'estimated' },
  cornerRadiusM: 0,
  coefficients: {
    x: { best: 0.9, low: 0.7, high: 1.1, areaBase: 'width × height', source: 'towed in a car park' },
    y: null,
    z: null,
  },
};

const aerial: ProjectShape = {
  kind: 'measuredArea',
  dragAreaM2: { best: 0.03, low: 0.02, high: 0.05 },
  provenance: { kind: 'pull-test', source: 'spring balance, six readings' },
  pullTest: null,
};

/** A boat in a uniform wind of 10 m/s from abeam of her course, at 5 m/s: the numbers can be done on paper. */
const workingProject: Project = blankProject({
  methods: { ...defaultMethods, windLaw: { kind: 'uniform' } },
  fittings: [
    blankFitting({
      id: 'pole',
      name: 'Upright pole',
      zoneId: 'deck',
      shape: roundBar(0.1),
      placement: between(point(0, 0, 2), point(0, 0, 5)),
    }),
    blankFitting({
      id: 'posts',
      name: 'Row of posts',
      zoneId: 'deck',
      shape: roundBar(0.03),
      placement: {
        kind: 'endPoints',
        start: point(4, -1, 1.2),
        end: point(4, -1, 1.9),
        basis: 'estimated',
        row: { count: 9, lastStart: point(-4, -1, 1.2), lastEnd: point(-4, -1, 1.9) },
        pair: false,
      },
      flags: { safetyRequired: true, structural: false, movingPart: false, classRule: null },
    }),
    blankFitting({
      id: 'box',
      name: 'Locker box',
      zoneId: 'deck',
      shape: box,
      placement: between(point(-2, 0.5, 1.2), point(-2, 0.5, 1.2)),
      dutyFraction: { default: 0.25, byCondition: [] },
    }),
    blankFitting({
      id: 'aerial',
      name: 'Aerial',
      zoneId: 'deck',
      shape: aerial,
      placement: between(point(-5, 0, 3), point(-5, 0, 3)),
      exposure: { best: 0.8, low: 0.7, high: 0.9, source: 'in the lee of the canopy' },
    }),
    blankFitting({
      id: 'wire',
      name: 'Fore-and-aft wire',
      zoneId: 'deck',
      shape: roundBar(0.006),
      placement: between(point(5, 0.5, 1.8), point(-5, 0.5, 1.8)),
    }),
    blankFitting({
      id: 'tent',
      name: 'Harbour tent',
      zoneId: 'deck',
      shape: box,
      placement: between(point(0, 0, 1.5), point(0, 0, 1.5)),
      excluded: { reason: 'ashore' },
    }),
  ],
  conditions: [
    blankCondition({
      id: 'reach',
      name: 'Beam reach',
      wind: { kind: 'true', speedMs: 10, heightM: 10, angleFromCourseDeg: 90 },
      boatSpeedMs: 5,
    }),
    blankCondition({
      id: 'beat',
      name: 'Close to the wind',
      wind: { kind: 'true', speedMs: 8, heightM: 10, angleFromCourseDeg: 5 },
      boatSpeedMs: 3,
      prices: { hullDragPerSideForce: 0.1, driveLostPerHeelingMomentPerM: 0.01, atHeelLimit: true },
    }),
  ],
  profile: {
    name: 'Round the cans',
    entries: [
      { conditionId: 'reach', hours: 3 },
      { conditionId: 'beat', hours: 1 },
    ],
  },
  plans: [
    blankPlan({
      id: 'thin',
      name: 'Thinner',
      items: [
        blankItem({
          id: 'thin-pole',
          name: 'Thinner pole',
          fittingId: 'pole',
          change: { kind: 'slimmer', diameter: { m: 0.06, basis: 'drawing' } },
        }),
        blankItem({
          id: 'no-posts',
          name: 'No posts',
          fittingId: 'posts',
          change: { kind: 'removed' },
        }),
        blankItem({ id: 'no-box', name: 'No box', fittingId: 'box', change: { kind: 'removed' } }),
      ],
    }),
  ],
});

/** Puts the project into the store and selects a fitting. */
export function openAt(fittingId: string): void {
  const saved = saveProject(workingProject);
  if (!saved.ok) throw new Error(saved.errors.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  useAppStore.getState().openText('working.windtoll.json', saved.text);
  useAppStore.getState().select(fittingId);
}
