import {
  apparentWindAt,
  apparentWindVelocityAt,
  instrumentReadingAt,
  trueWindOf,
} from '../../src/physics/condition/sailingState';
import { toBoat } from '../../src/physics/frames/boatToTrack';
import { fromSi, toSi } from '../../src/units/convert';
import { toLastDigit, type PublishedCheck, type Row } from './publishedCheck';
import { conditionOf, stateOf, trueWind } from './support';

const topic = 'Apparent wind';

/** [TWS, TWA, boat speed, heel, AWS, AWA, AWS_eff, AWA_eff, along the mast]; one unit of speed, degrees */
const table = [
  [10, 45, 6, 0, '14.8611', '28.4121', '14.8611', '28.4121', '0'],
  [10, 45, 6, 20, '14.8611', '28.4121', '14.6630', '26.9463', '2.4184'],
  [12, 90, 9, 15, '15.0000', '53.1301', '14.6749', '52.1722', '3.1058'],
  [10, 110, 12, 20, '12.7246', '47.6026', '12.3120', '45.8241', '3.2139'],
  [15, 180, 10, 10, '5.0000', '180', '5.0000', '180', '0'],
] as const;

const common = {
  topic,
  kind: 'transcription',
  source: {
    title:
      'Apparent wind of a heeled boat, as in the textbooks on sailing (Marchaj; Larsson et al.; Fossati)',
    where: 'table of five cases; textbook pages not read',
  },
  confidence: 'derived',
} as const;

const forwards = table.flatMap(
  ([speed, angle, boatSpeed, heel, aws, awa, awsInPlane, awaInPlane, alongMast]) => {
    const state = stateOf(
      conditionOf({ wind: trueWind(speed, angle), boatSpeedMs: boatSpeed, heelRad: toSi(heel, 'deg') }),
    );
    const name = `${speed}-${angle}-${boatSpeed}-${heel}`;
    const given = `true ${speed} from ${angle} deg, boat ${boatSpeed}, heel ${heel} deg`;
    const speeds: Row[] = [
      [`apparent-speed-${name}`, `apparent speed; ${given}`, aws, () => apparentWindAt(state, 10).speedMs],
      [
        `apparent-plane-speed-${name}`,
        `apparent speed in the heeled plane; ${given}`,
        awsInPlane,
        () => instrumentReadingAt(state, 10).speedMs,
      ],
      [
        `apparent-mast-${name}`,
        `apparent speed along the mast; ${given}`,
        alongMast,
        () => Math.abs(toBoat(state.rotation, apparentWindVelocityAt(state, 10))[2]),
      ],
    ];
    const angles: Row[] = [
      [
        `apparent-angle-${name}`,
        `apparent angle; ${given}`,
        awa,
        () => fromSi(apparentWindAt(state, 10).angleFromBowRad, 'deg'),
      ],
      [
        `apparent-plane-angle-${name}`,
        `apparent angle in the heeled plane; ${given}`,
        awaInPlane,
        () => fromSi(instrumentReadingAt(state, 10).angleFromBowRad, 'deg'),
      ],
    ];
    return [
      ...toLastDigit({ ...common, unit: 'm/s' }, speeds),
      ...toLastDigit({ ...common, unit: 'deg' }, angles),
    ];
  },
);

/** The same table read from right to left: what the instruments show gives the true wind back. */
const backwards = ([table[1], table[2], table[3]] as const).flatMap(
  ([speed, angle, boatSpeed, heel, , , awsInPlane, awaInPlane]) => {
    const solved = () =>
      trueWindOf(
        conditionOf({
          wind: {
            kind: 'instrument',
            speedMs: Number(awsInPlane),
            angleFromBowRad: toSi(Number(awaInPlane), 'deg'),
            heightUpMastM: 10,
          },
          boatSpeedMs: boatSpeed,
          heelRad: toSi(heel, 'deg'),
        }),
      );
    const name = `${speed}-${angle}-${boatSpeed}-${heel}`;
    const given = `instruments ${awsInPlane} from ${awaInPlane} deg, boat ${boatSpeed}, heel ${heel} deg`;
    return [
      ...toLastDigit({ ...common, unit: 'm/s' }, [
        [`apparent-back-speed-${name}`, `true wind; ${given}`, `${speed}.000`, () => solved().speedAt10Ms],
      ]),
      ...toLastDigit({ ...common, unit: 'deg' }, [
        [
          `apparent-back-angle-${name}`,
          `true wind angle; ${given}`,
          `${angle}.00`,
          () => fromSi(solved().angleFromCourseRad, 'deg'),
        ],
      ]),
    ];
  },
);

export const apparentWindChecks: readonly PublishedCheck[] = [...forwards, ...backwards];
