import { offAxisBand } from '../../physics/body/threeAxisBody';
import { netSolidityRange } from '../../physics/body/net';
import { sphereReynoldsRange } from '../../physics/body/sphereTable';
import type { MemberShape, Shape } from '../../physics/fitting/fittingInput';
import { isMemberShape } from '../../physics/fitting/fittingInput';
import { dnvEndNodes } from '../../physics/section/endEffect';
import { fairingRange } from '../../physics/section/fairingTable';
import { roundBarReynoldsRange } from '../../physics/section/roundBarTable';
import { wireReynoldsRange } from '../../physics/section/wireTable';
import { formatValue, formatValueRange } from '../../units/print';

/** Where the models behind a kind of fitting hold, in a few sentences. */
export function validityText(shape: Shape): string {
  if (isMemberShape(shape)) {
    return `${memberText(shape)} Cross-flow principle: measured down to 45° between wind and axis, fair to 30°.${endText(shape)}`;
  }
  switch (shape.kind) {
    case 'bluffBody':
      return `Three-axis rule: coefficients hold along the axes; between them ${offAxisText()}.`;
    case 'measuredArea':
      return 'A measured drag area holds for the direction and the speed it was measured at; here it is taken as the same from every side.';
    case 'sphere':
      return shape.coefficient === null ? `Sphere: ${reynoldsText(sphereReynoldsRange)}.` : typedText;
    case 'net':
      return `Net: solidity ${between(netSolidityRange)}; between its face and its plane ${offAxisText()}. A net that fills, drips or ices over has another solidity.`;
  }
}

const typedText = 'Typed coefficient: held at every Reynolds number and from every side.';

function offAxisText(): string {
  return `${formatValueRange(offAxisBand.low, offAxisBand.high, '%', { decimals: 0 })} %`;
}

interface Reach {
  readonly from: number;
  readonly to: number;
}

function between({ from, to }: Reach): string {
  return `${formatValue(from, '1')} to ${formatValue(to, '1')}`;
}

function reynoldsText({ from, to }: Reach): string {
  return `Reynolds number ${formatValue(from, '1', { decimals: 0 })} to ${formatValue(to, '1')}`;
}

function memberText(shape: MemberShape): string {
  if (shape.coefficient !== null) return typedText;
  switch (shape.kind) {
    case 'roundBar':
      return `Round bar: ${reynoldsText(roundBarReynoldsRange)}.`;
    case 'wire':
      return shape.construction === 'rod'
        ? `Rod: as a round bar, ${reynoldsText(roundBarReynoldsRange)}.`
        : `Wire and rope: ${reynoldsText(wireReynoldsRange)}; long enough to have no end effect.`;
    case 'ellipticalBar':
      return 'Ellipse: few sources, wide range; none of them for wind off its axes.';
    case 'rectangularBar':
      return `Rectangle: EN’s diagram holds for wind square onto a side; between the sides ${offAxisText()}. A thin plate near its own plane lifts like a wing, which only the high edge of the range knows.`;
    case 'fairing': {
      const { thicknessFrom, thicknessTo, reynoldsFrom, reynoldsTo } = fairingRange;
      const thickness = between({ from: thicknessFrom, to: thicknessTo });
      return `Fairing: thickness over chord ${thickness}, on the chord ${reynoldsText({ from: reynoldsFrom, to: reynoldsTo })}; outside the nearest, with half as much doubt again. Computed below the stall, measured above.`;
    }
  }
}

function endText({ kind }: MemberShape): string {
  if (kind === 'wire' || kind === 'fairing') return '';
  return ` End effect: from a slenderness of ${formatValue(dnvEndNodes[0]?.[0] ?? 0, '1', { decimals: 0 })}.`;
}
