import { smoothStep } from '../numerics/smoothStep';
import { endFactor, type EndMethod } from './endEffect';
import { emptyStrip, type PreparedSection, type StripCoefficients, type StripFlow } from './memberFamily';
import {
  plateEndFactor,
  rectangleAxis,
  rectangleRegime,
  sectionOffAxisBand,
  sectionOffAxisShare,
  type AxisCoefficient,
} from './rectangle';
import { prepareRoundBar, type TypedCoefficient } from './roundBarSection';
import { fillTyped } from './typedStrip';

/** From this roundness, corner radius over half the smaller side, up to 1 a square section becomes the round bar. */
const roundFrom = 0.4;
/** Sides that differ by a factor of two or more never do. */
const notRoundFromLog = Math.log(2);
/** Thinner plates than this, thickness over chord, can lift like a wing near their own plane. */
const wingFrom = 0.1;
const wingTo = 0.25;
/** A thin plate stalls by about this incidence (from memory: Hoerner). */
const plateStallRad = (10 * Math.PI) / 180;
const plateStalledRad = (18 * Math.PI) / 180;

/**
 * Flat bar, box or rectangular tube with a direction. In the section's own axes each part of the wind makes its force:
 * F_c = rho/2 C_c t |u_n| u_c along the chord and F_t = rho/2 C_t c |u_n| u_t across it, C from EN's diagram for the wind
 * square onto that side. Coefficients are handed out on chord x length, as drag and lift.
 *
 * Near their own plane thin plates lift like a wing, at most 2 pi sin a cos a below the stall; the rule of components
 * does not know that, so the high edge does. With corner radii towards half a side a square section becomes the round
 * bar. Finite length counts in widths across the wind. Typed: drag on chord x length from every side, no lift.
 * Source: en-rectangles, ledger-practice.
 */
export function prepareRectangle(
  chordM: number,
  thicknessM: number,
  cornerRadiusM: number,
  typed: TypedCoefficient | null,
): PreparedSection {
  const roundShare = typed === null ? roundness(chordM, thicknessM, cornerRadiusM) : 0;
  const round = prepareRoundBar(chordM, 0, null);
  const roundStrip = emptyStrip();
  const along: AxisCoefficient = { best: 0, low: 0, high: 0 };
  const across: AxisCoefficient = { best: 0, low: 0, high: 0 };
  const ratio = thicknessM / chordM;
  const wingShare = 1 - smoothStep(wingFrom, wingTo, ratio);
  return {
    isDirected: true,
    referenceWidthM: chordM,
    perimeterM: 2 * (chordM + thicknessM) - (8 - 2 * Math.PI) * cornerRadiusM,
    strip(flow: StripFlow, out: StripCoefficients, withBand: boolean): void {
      const speedOverNu = flow.crossSpeedMs / flow.kinematicViscosityM2S;
      out.reynolds = speedOverNu * chordM;
      out.logCrisisReynolds = logOf(out.reynolds);
      if (typed !== null) {
        fillTyped(typed, out);
        return;
      }
      rectangleAxis(1 / ratio, cornerRadiusM / thicknessM, logOf(speedOverNu * thicknessM), along);
      rectangleAxis(ratio, cornerRadiusM / chordM, logOf(speedOverNu * chordM), across);
      out.regime = rectangleRegime(flow.incidenceRad);
      byComponents(along, across, ratio, wingShare, flow.incidenceRad, out);
      if (roundShare === 0) return;
      round.strip(flow, roundStrip, withBand);
      mixIn(roundStrip, roundShare, out);
    },
    endFactor(method: EndMethod, slenderness: number, logCrisisReynolds: number, incidenceRad = 0): number {
      const onWidth = slenderness / widthShare(ratio, incidenceRad);
      const plate = method === 'dnv' ? plateEndFactor(onWidth) : endFactor('en', 2 * onWidth, 0);
      if (roundShare === 0) return plate;
      return plate + roundShare * (endFactor(method, slenderness, logCrisisReynolds) - plate);
    },
  };
}

/** Width across the wind over the chord, between the two sides without a kink. */
function widthShare(ratio: number, incidenceRad: number): number {
  return Math.hypot(ratio * Math.cos(incidenceRad), Math.sin(incidenceRad));
}

function logOf(reynolds: number): number {
  return Math.log10(Math.max(reynolds, 1e-3));
}

/** 1 for a square section whose corners meet, 0 for sharp corners and for oblongs. */
function roundness(chordM: number, thicknessM: number, cornerRadiusM: number): number {
  const corners = smoothStep(roundFrom, 1, (2 * cornerRadiusM) / Math.min(chordM, thicknessM));
  return corners * (1 - smoothStep(0, notRoundFromLog, Math.abs(Math.log(chordM / thicknessM))));
}

function byComponents(
  along: AxisCoefficient,
  across: AxisCoefficient,
  ratio: number,
  wingShare: number,
  incidenceRad: number,
  out: StripCoefficients,
): void {
  const c = Math.cos(incidenceRad);
  const s = Math.sin(incidenceRad);
  const off = sectionOffAxisShare(incidenceRad);
  const up = 1 + sectionOffAxisBand.high * off;
  const down = 1 + sectionOffAxisBand.low * off;
  out.drag = along.best * ratio * c * c + across.best * s * s;
  out.dragLow = (along.low * ratio * c * c + across.low * s * s) * down;
  out.dragHigh = (along.high * ratio * c * c + across.high * s * s) * up;
  out.lift = (across.best - along.best * ratio) * s * c;
  out.liftLow = (across.low - along.low * ratio) * s * c * down;
  const wing = wingShare * 2 * Math.PI * s * c * attachedShare(c, s);
  const plain = (across.high - along.high * ratio) * s * c * up;
  out.liftHigh = Math.abs(wing) > Math.abs(plain) ? wing : plain;
}

/** 1 where a plate's flow may be attached, from its nose or its tail; 0 when it is stalled. */
function attachedShare(cosine: number, sine: number): number {
  return 1 - smoothStep(plateStallRad, plateStalledRad, Math.atan2(Math.abs(sine), Math.abs(cosine)));
}

function mixIn(round: StripCoefficients, share: number, out: StripCoefficients): void {
  out.drag += share * (round.drag - out.drag);
  out.dragLow += share * (round.dragLow - out.dragLow);
  out.dragHigh += share * (round.dragHigh - out.dragHigh);
  out.lift *= 1 - share;
  out.liftLow *= 1 - share;
  out.liftHigh *= 1 - share;
  out.logCrisisReynolds += share * (round.logCrisisReynolds - out.logCrisisReynolds);
}
