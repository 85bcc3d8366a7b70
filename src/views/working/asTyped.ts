import type { Basis } from '../../physics/fitting/fittingInput';
import type {
  ProjectDimension,
  ProjectDirection,
  ProjectFitting,
  ProjectPlacement,
  ProjectPoint,
  ProjectShapeOf,
  ProjectSurface,
} from '../../project/file/schema';
import type { ProjectSection } from '../../project/file/shapeKinds';
import { wireNames } from '../../project/wording/shapeNames';
import { toSi } from '../../units/convert';
import { formatQuantity, formatValue, printUnit } from '../../units/print';
import { endWords } from './memberNotes';

const basisWords: Readonly<Record<Basis, string>> = {
  measured: 'measured',
  drawing: 'from a drawing',
  estimated: 'estimated',
};

/** Size and place of a fitting as somebody typed them, each with how it was obtained. */
export function asTyped(fitting: ProjectFitting): string[] {
  return [...shapeWords(fitting), placeWords(fitting.placement)];
}

function shapeWords({ shape }: ProjectFitting): string[] {
  switch (shape.kind) {
    case 'roundBar':
      return [`round bar Ø ${size(shape.diameter)}, ${surfaceWords(shape.surface)}`, endsWords(shape.ends)];
    case 'wire':
      return [`${wireNames[shape.construction]} Ø ${size(shape.diameter)}`];
    case 'ellipticalBar':
    case 'rectangularBar':
    case 'fairing':
      return [sectionWords(shape), directionWords(shape.direction), endsWords(shape.ends)];
    case 'sphere':
      return [`sphere Ø ${size(shape.diameter)}, ${surfaceWords(shape.surface)}`];
    case 'net':
      return [
        `net ${size(shape.width)} wide, ${size(shape.height)} high, ${facingWords[shape.facing]}`,
        `solidity ${formatValue(shape.solidity, '1')}, twine Ø ${size(shape.wireDiameter)}`,
      ];
    case 'bluffBody':
      return [
        `body ${size(shape.length)} long, ${size(shape.width)} wide, ${size(shape.height)} high${cornerWords(shape.cornerRadiusM)}`,
      ];
    case 'measuredArea':
      return [`drag area ${formatQuantity(shape.dragAreaM2.best, 'm2')}`];
  }
}

const sectionNames: Readonly<Record<ProjectSection['kind'], string>> = {
  ellipticalBar: 'elliptical bar',
  rectangularBar: 'rectangular bar',
  fairing: 'fairing',
};

const facingWords = { x: 'facing ahead and astern', y: 'facing abeam', z: 'facing up and down' } as const;

function sectionWords(shape: ProjectSection): string {
  const corners = shape.kind === 'rectangularBar' ? cornerWords(shape.cornerRadiusM) : '';
  return `${sectionNames[shape.kind]}, chord ${size(shape.chord)}, thickness ${size(shape.thickness)}${corners}`;
}

function cornerWords(radiusM: number): string {
  return radiusM === 0 ? '' : `, corners rounded to ${formatQuantity(radiusM, 'mm')}`;
}

function directionWords(direction: ProjectDirection): string {
  if (direction.kind === 'fixed') {
    const { angleDeg } = direction;
    return angleDeg === 0
      ? 'fixed, nose forward'
      : `fixed, nose ${degrees(Math.abs(angleDeg))} to ${angleDeg > 0 ? 'port' : 'starboard'}`;
  }
  const { pieces, residualDeg } = direction;
  const inPieces = pieces === 1 ? 'in one piece' : `in ${formatValue(pieces, '1', { decimals: 0 })} pieces`;
  return `turns with the wind ${inPieces}, off by up to ${degrees(residualDeg)}`;
}

function endsWords([first, second]: ProjectShapeOf<'roundBar'>['ends']): string {
  return `ends ${endWords[first]} and ${endWords[second]}`;
}

function size({ m, basis }: ProjectDimension): string {
  const text = m < 1 ? formatQuantity(m, 'mm') : formatQuantity(m, 'm');
  return `${text} (${basisWords[basis]})`;
}

const finishWords = (finish: string): string =>
  finish.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

function surfaceWords(surface: ProjectSurface): string {
  if (surface.kind === 'smooth') return 'smooth';
  if (surface.kind === 'finish') return finishWords(surface.finish);
  return `roughness ${formatQuantity(surface.roughnessM, 'mm')}`;
}

function placeWords(placement: ProjectPlacement): string {
  const pair = placement.pair ? ', mirrored to the other side' : '';
  const row =
    placement.row === null
      ? ''
      : `, first of a row of ${formatValue(placement.row.count, '1', { decimals: 0 })}`;
  if (placement.kind === 'endPoints') {
    return `from ${pointWords(placement.start)} to ${pointWords(placement.end)} ${printUnit('m')} in B (${basisWords[placement.basis]})${row}${pair}`;
  }
  const { aftOfStemM, side, athwart, aboveDeckM, lengthM, leanAftDeg, leanOutDeg } = placement;
  return (
    `taped: ${metres(aftOfStemM)} aft of the stem, ${side}, ${metres(athwart.inboardOrOutM)} ` +
    `${athwart.from === 'centreline' ? 'out from the centreline' : 'in from the deck edge'}, ${metres(aboveDeckM)} above the deck, ` +
    `${metres(lengthM)} long, leaning ${degrees(leanAftDeg)} aft and ${degrees(leanOutDeg)} out (${basisWords[placement.basis]})${row}${pair}`
  );
}

function pointWords({ xM, yM, zM }: ProjectPoint): string {
  return `(${[xM, yM, zM].map((m) => formatValue(m, 'm', { decimals: 2 })).join(', ')})`;
}

function metres(valueM: number): string {
  return formatQuantity(valueM, 'm', { decimals: 2 });
}

function degrees(deg: number): string {
  return formatQuantity(toSi(deg, 'deg'), 'deg', { decimals: 0 });
}
