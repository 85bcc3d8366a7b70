import { pullTestArea, type PullTestProblem, type PullTestResult } from '../../physics/body/pullTest';
import { toSi } from '../../units/convert';
import type { Project, ProjectPullTest, ProjectRanged, ProjectShape, ProjectShapeOf } from './schema';
import { roughnessOf } from './shapeKinds';
import { pathText, type FieldError, type PathStep } from './fieldErrors';

/** What the sizes of one shape say against each other, for the fittings and for the shapes that refit items bring. */
export function shapeErrors({ fittings, plans }: Project): FieldError[] {
  return [
    ...fittings.flatMap(({ shape }, i) => errorsOf(shape, ['fittings', i, 'shape'])),
    ...plans.flatMap(({ items }, i) =>
      items.flatMap(({ change }, k) =>
        change.kind === 'typed' ? errorsOf(change.shape, ['plans', i, 'items', k, 'change', 'shape']) : [],
      ),
    ),
  ];
}

function errorsOf(shape: ProjectShape, steps: readonly PathStep[]): FieldError[] {
  switch (shape.kind) {
    case 'roundBar':
    case 'sphere':
      return surfaceErrors(shape, steps);
    case 'wire':
      return [];
    case 'ellipticalBar':
    case 'fairing':
      return thicknessErrors(shape, steps);
    case 'rectangularBar':
      return cornerErrors(shape.cornerRadiusM, [shape.chord.m, shape.thickness.m], steps);
    case 'bluffBody':
      return cornerErrors(shape.cornerRadiusM, [shape.length.m, shape.width.m, shape.height.m], steps);
    case 'net':
      return netErrors(shape, steps);
    case 'measuredArea':
      return pullTestErrors(shape, steps);
  }
}

function surfaceErrors(
  { surface, diameter }: ProjectShapeOf<'roundBar' | 'sphere'>,
  steps: readonly PathStep[],
): FieldError[] {
  const roughnessM = roughnessOf(surface);
  if (roughnessM <= diameter.m / 2) return [];
  const key = surface.kind === 'finish' ? 'finish' : 'roughnessM';
  const message = `a roughness of ${roughnessM} m is more than half the diameter (${diameter.m} m)`;
  return [{ path: pathText([...steps, 'surface', key]), message }];
}

/** The wind meets the nose of an ellipse or a fairing: a section thicker than its chord is turned, not shaped, otherwise. */
function thicknessErrors(
  { chord, thickness }: ProjectShapeOf<'ellipticalBar' | 'fairing'>,
  steps: readonly PathStep[],
): FieldError[] {
  if (thickness.m <= chord.m) return [];
  const message = `must not be above the chord (${chord.m}); it is ${thickness.m}. Swap the two and turn the section by 90°`;
  return [{ path: pathText([...steps, 'thickness']), message }];
}

function cornerErrors(radiusM: number, sidesM: readonly number[], steps: readonly PathStep[]): FieldError[] {
  const mostM = Math.min(...sidesM) / 2;
  if (radiusM <= mostM) return [];
  const message = `must not be above half the smallest side (${mostM}); it is ${radiusM}`;
  return [{ path: pathText([...steps, 'cornerRadiusM']), message }];
}

function netErrors(
  { width, height, wireDiameter }: ProjectShapeOf<'net'>,
  steps: readonly PathStep[],
): FieldError[] {
  const mostM = Math.min(width.m, height.m);
  if (wireDiameter.m <= mostM) return [];
  const message = `must not be above the net's smaller side (${mostM}); it is ${wireDiameter.m}`;
  return [{ path: pathText([...steps, 'wireDiameter']), message }];
}

/** A pull test as the file holds it, worked out. */
export function pullTestOf(test: ProjectPullTest): PullTestResult {
  return pullTestArea({
    forcesN: test.forcesN,
    tareN: test.tareN,
    pullAngleRad: toSi(test.pullAngleDeg, 'deg'),
    windSpeedMs: test.windSpeedMs,
    windSpeedDoubt: test.windSpeedDoubtFraction,
    densityKgM3: test.densityKgM3,
    forceMeterDoubtN: test.forceMeterDoubtN,
  });
}

/** The drag area that a pull test gives, or why it gives none. */
export function dragAreaOf(
  test: ProjectPullTest,
):
  | { readonly ok: true; readonly dragAreaM2: ProjectRanged }
  | { readonly ok: false; readonly message: string } {
  const result = pullTestOf(test);
  if (result.kind === 'problem') return { ok: false, message: problemWords[result.problem] };
  const { dragAreaBestM2, dragAreaLowM2, dragAreaHighM2 } = result.trace;
  return { ok: true, dragAreaM2: { best: dragAreaBestM2, low: dragAreaLowM2, high: dragAreaHighM2 } };
}

const problemWords: Readonly<Record<PullTestProblem, string>> = {
  'no-reading': 'a pull test needs a reading at least',
  'not-a-number': 'every number of a pull test must be finite',
  'wind-not-positive': 'the wind of a pull test must be above 0',
  'density-not-positive': 'the density of the air must be above 0',
  'pull-across-the-wind': 'the pull must lie within 60° of the wind',
  'doubt-out-of-range': 'a doubt must not be negative, and that of the wind must lie below 1',
  'force-not-above-tare': 'the mean of the readings must be above the tare',
};

/** Room for the last digit that a hand-written file may leave out. */
const sameArea = 1e-6;

/** A drag area beside a pull test is the one that follows from it: two that differ would hide which one counts. */
function pullTestErrors(
  { pullTest, dragAreaM2 }: ProjectShapeOf<'measuredArea'>,
  steps: readonly PathStep[],
): FieldError[] {
  if (pullTest === null) return [];
  const answer = dragAreaOf(pullTest);
  if (!answer.ok) return [{ path: pathText([...steps, 'pullTest']), message: answer.message }];
  return (['best', 'low', 'high'] as const).flatMap((key) => {
    const follows = answer.dragAreaM2[key];
    if (Math.abs(dragAreaM2[key] - follows) <= sameArea * answer.dragAreaM2.best) return [];
    const message = `the pull test gives ${follows}; it is ${dragAreaM2[key]}`;
    return [{ path: pathText([...steps, 'dragAreaM2', key]), message }];
  });
}
