import { netDragAreas } from '../../physics/body/net';
import { sphereColumn, sphereTable } from '../../physics/body/sphereTable';
import { edgedBodyCoefficient, roundedBodyCoefficient } from '../../physics/body/threeAxisBody';
import { valueAt, type CubicTable } from '../../physics/numerics/cubicTable';
import { ellipseCoefficients, ellipseShape, emptyEllipse } from '../../physics/section/ellipse';
import { laminarAlignedDrag, turbulentAlignedDrag } from '../../physics/section/fairingAligned';
import { rectangleAxis } from '../../physics/section/rectangle';
import { roundBarColumn, roundBarTable } from '../../physics/section/roundBarTable';
import type { ProjectRanged, ProjectShape, ProjectShapeOf } from '../file/schema';
import { isRound } from '../file/shapeKinds';
import { neat } from './neat';

type Area = ProjectShapeOf<'measuredArea'>;

/** Where a coefficient is wanted before any wind is known: an everyday fitting in an everyday wind. */
const everydayReynolds = 1e5;

/** What a shape shows to a wind on its front, times the handbook's coefficient, as an estimate that says so. */
export function asArea(shape: ProjectShape, lengthM: number): Area {
  if (shape.kind === 'measuredArea') return shape;
  const { range, areaM2, words } = frontOf(shape, lengthM);
  return {
    kind: 'measuredArea',
    dragAreaM2: {
      best: neat(range.best * areaM2),
      low: neat(range.low * areaM2),
      high: neat(range.high * areaM2),
    },
    provenance: { kind: 'estimate', source: words },
    pullTest: null,
  };
}

interface Front {
  readonly range: ProjectRanged;
  readonly areaM2: number;
  readonly words: string;
}

function frontOf(shape: Exclude<ProjectShape, Area>, lengthM: number): Front {
  if (isRound(shape)) {
    return {
      range: shape.coefficient ?? barCoefficient(),
      areaM2: shape.diameter.m * lengthM,
      words: 'drag coefficient of a round bar across the wind x diameter x length',
    };
  }
  switch (shape.kind) {
    case 'ellipticalBar':
    case 'rectangularBar':
    case 'fairing':
      return sectionFront(shape, lengthM);
    case 'bluffBody':
      return {
        range: shape.coefficients.x ?? bodyCoefficient(shape),
        areaM2: shape.width.m * shape.height.m,
        words: 'drag coefficient of an edged body x width x height',
      };
    case 'sphere':
      return {
        range: shape.coefficient ?? sphereCoefficient(),
        areaM2: (Math.PI / 4) * shape.diameter.m ** 2,
        words: 'drag coefficient of a sphere x frontal area',
      };
    case 'net':
      return {
        range: netCoefficient(shape),
        areaM2: shape.width.m * shape.height.m,
        words: 'drag coefficient of a net by its solidity x width x height',
      };
  }
}

function bodyCoefficient({ cornerRadiusM, width, height }: ProjectShapeOf<'bluffBody'>): ProjectRanged {
  return roundedBodyCoefficient(cornerRadiusM / Math.min(width.m, height.m));
}

/** Twine of that thickness in a wind of 10 m/s. */
function netCoefficient({ solidity, wireDiameter }: ProjectShapeOf<'net'>): ProjectRanged {
  const trace = netDragAreas({ areaM2: 1, solidity, wireDiameterM: wireDiameter.m }, 10, 1.5e-5);
  return {
    best: trace?.normalCoefficientBest ?? 0,
    low: trace?.normalCoefficientLow ?? 0,
    high: trace?.normalCoefficientHigh ?? 0,
  };
}

type Section = ProjectShapeOf<'ellipticalBar' | 'rectangularBar' | 'fairing'>;

/** With the wind along the chord. */
function sectionFront(shape: Section, lengthM: number): Front {
  const areaM2 = shape.chord.m * lengthM;
  if (shape.coefficient !== null) {
    return { range: shape.coefficient, areaM2, words: 'typed drag coefficient x chord x length' };
  }
  const ratio = shape.thickness.m / shape.chord.m;
  const words = `drag coefficient ${sectionWords[shape.kind]} along the wind x chord x length`;
  return { range: sectionCoefficient(shape, ratio), areaM2, words };
}

const sectionWords: Readonly<Record<Section['kind'], string>> = {
  ellipticalBar: 'of an ellipse',
  rectangularBar: 'of a rectangle',
  fairing: 'of a fairing',
};

/** On the chord. */
function sectionCoefficient(shape: Section, ratio: number): ProjectRanged {
  switch (shape.kind) {
    case 'rectangularBar': {
      const radiusOverWidth = shape.cornerRadiusM / shape.thickness.m;
      const axis = { best: 0, low: 0, high: 0 };
      const { best, low, high } = rectangleAxis(
        1 / ratio,
        radiusOverWidth,
        Math.log10(everydayReynolds),
        axis,
      );
      return { best: best * ratio, low: low * ratio, high: high * ratio };
    }
    case 'ellipticalBar': {
      const { drag, dragLow, dragHigh } = ellipseCoefficients(
        everydayReynolds,
        ellipseShape(shape.chord.m, shape.thickness.m),
        0,
        1,
        emptyEllipse(),
      );
      return { best: drag, low: dragLow, high: dragHigh };
    }
    case 'fairing': {
      const laminar = laminarAlignedDrag(ratio, everydayReynolds);
      const turbulent = turbulentAlignedDrag(ratio, everydayReynolds);
      const [low, high] = [Math.min(laminar, turbulent), Math.max(laminar, turbulent)];
      return { best: turbulent, low, high };
    }
  }
}

/** A round bar across the wind below its drag crisis. */
export function barCoefficient(): ProjectRanged {
  return tableCoefficient(roundBarTable, roundBarColumn);
}

function sphereCoefficient(): ProjectRanged {
  return tableCoefficient(sphereTable, sphereColumn);
}

function tableCoefficient(
  table: CubicTable,
  column: Readonly<Record<'best' | 'low' | 'high', number>>,
): ProjectRanged {
  const at = (which: number): number => valueAt(table, which, Math.log10(everydayReynolds));
  return { best: at(column.best), low: at(column.low), high: at(column.high) };
}

/** Face of an edged body with that drag area, m2. */
export function edgedBodyAreaM2(dragAreaM2: number): number {
  return dragAreaM2 / edgedBodyCoefficient.best;
}
