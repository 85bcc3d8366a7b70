import { airOf } from '../../src/physics/air/air';
import { toSi } from '../../src/units/convert';
import { toLastDigit, type PublishedCheck } from './publishedCheck';
import { conditionOf, dragArea, evaluate, windMetAs } from './support';

const topic = 'Ledger arithmetic';

/** [D in N, apparent angle in deg, boat speed in kn, against the track, side force, power] */
const table = [
  [10, 30, 8, '8.6603', '5.0000', '35.642'],
  [10, 90, 8, '0', '10', '0'],
  [10, 120, 8, '-5.0000', '8.6603', '-20.578'],
  [10, 0, 10, '10', '0', '51.444'],
] as const;

const common = {
  topic,
  kind: 'transcription',
  source: {
    title: 'Elementary mechanics: F_x = D cos b, F_y = D sin b, P = F_x V',
    where: 'table of four cases',
  },
  confidence: 'derived',
} as const;

const apparentMs = 12;

export const ledgerArithmeticChecks: readonly PublishedCheck[] = table.flatMap(
  ([dragN, angle, boatSpeedKn, against, side, power]) => {
    const boatSpeedMs = toSi(boatSpeedKn, 'kn');
    const condition = conditionOf({ wind: windMetAs(apparentMs, angle, boatSpeedMs), boatSpeedMs });
    const pressure = 0.5 * airOf(condition.air).densityKgM3 * apparentMs ** 2;
    const result = () => evaluate(dragArea(dragN / pressure), condition).mean;
    const given = `${dragN} N of drag, apparent wind from ${angle} deg, boat ${boatSpeedKn} kn`;
    return [
      ...toLastDigit({ ...common, unit: 'N' }, [
        [
          `ledger-against-${angle}`,
          `force against the track; ${given}`,
          against,
          () => result().dragAgainstTrackN,
        ],
        [`ledger-side-${angle}`, `side force to leeward; ${given}`, side, () => result().sideForceN],
      ]),
      ...toLastDigit({ ...common, unit: 'W' }, [
        [`ledger-power-${angle}`, `track power; ${given}`, power, () => result().trackPowerW],
      ]),
    ];
  },
);
