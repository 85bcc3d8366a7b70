import type { ViewKind } from '../../charts/windsEye/viewOf';
import { apparentWindAt, type SailingState } from '../../physics/condition/sailingState';
import type { Project } from '../../project/file/schema';
import type { BasisPart, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { toSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { measureLabels, wishesOf, type MeasureId, type PictureRow, type PictureSide } from './pictureModel';

/** From where she is looked at. */
export interface Looking {
  readonly kind: ViewKind;
  readonly heightM: number;
  readonly turnRad: number;
  readonly state: SailingState;
}

const mostNamed = 9;

/** The same as the picture says, for those who cannot see it, and its title. */
export function pictureWords(
  rows: readonly PictureRow[],
  looking: Looking,
  part: BasisPart,
  measure: MeasureId,
): { readonly title: string; readonly all: string } {
  const { condition } = part.summary;
  const title = `${titleOf(looking)}: ${condition.name}`;
  const wishes = wishesOf(rows);
  const ghosts = rows.filter(({ isGhost }) => isGhost);
  const named = wishes.slice(0, mostNamed).map(({ number, name, value }) => `${number} ${name} ${value}`);
  const rest = wishes.length - named.length;
  return {
    title,
    all: [
      `${title}.`,
      `Heel ${formatQuantity(toSi(condition.heelDeg, 'deg'), 'deg')}, leeway ${formatQuantity(toSi(condition.leewayDeg, 'deg'), 'deg')}, wind from ${condition.tack}.`,
      named.length === 0
        ? 'Nothing stands in the wind.'
        : `By ${measureLabels[measure]}, the largest first: ${named.join('; ')}${rest > 0 ? `; and ${rest} more` : ''}.`,
      ...(ghosts.length === 0
        ? []
        : [`Dashed, not in the wind here: ${ghosts.map(({ row }) => row.fitting.name).join(', ')}.`]),
      'Mast and sails are sketched from the boat’s length and mast, for orientation only.',
    ].join(' '),
  };
}

function titleOf({ kind, heightM, turnRad, state }: Looking): string {
  const turned = turnRad === 0 ? '' : `, turned by ${formatQuantity(turnRad, 'deg', { decimals: 0 })}`;
  switch (kind) {
    case 'wind': {
      const { speedMs, angleFromBowRad } = apparentWindAt(state, heightM);
      return `Seen along the apparent wind at ${formatQuantity(heightM, 'm')}, ${formatQuantity(speedMs, 'kn')} from ${formatQuantity(angleFromBowRad, 'deg')}${turned}`;
    }
    case 'astern':
      return `Seen from astern${turned}`;
    case 'side':
      return `Seen from windward, square to the heading${turned}`;
    case 'above':
      return `Seen from above${turned}`;
  }
}

/** What stands above the picture in a file. */
export function titleLines(
  project: Project,
  { question }: ProjectLedger,
  title: string,
  side: PictureSide,
): readonly string[] {
  const plan = project.plans.find(({ id }) => id === question.planId)?.name;
  const sideText = plan === undefined ? 'as sailed' : side === 'after' ? `after ${plan}` : `before ${plan}`;
  return [`${project.boat.name}, ${sideText}`, title];
}
