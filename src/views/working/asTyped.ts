import type { Basis } from '../../physics/fitting/fittingInput';
import type {
  ProjectDimension,
  ProjectFitting,
  ProjectPlacement,
  ProjectPoint,
  ProjectSurface,
} from '../../project/file/schema';
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
      return [
        `round bar Ø ${size(shape.diameter)}, ${surfaceWords(shape.surface)}`,
        `ends ${endWords[shape.ends[0]]} and ${endWords[shape.ends[1]]}`,
      ];
    case 'bluffBody':
      return [`body ${size(shape.length)} long, ${size(shape.width)} wide, ${size(shape.height)} high`];
    case 'measuredArea':
      return [`drag area ${formatQuantity(shape.dragAreaM2.best, 'm2')}`];
  }
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
