import { quantityIn, valueIn } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';
import { noChange, type Change } from './change';
import type { EnvelopeSlipId } from './envelopeCheck';
import { areaRuleOf } from './envelopeShapes';
import type { EnvelopeNumbers, WrittenNumber } from './readEnvelope';
import { fromSi, toSi } from '../../units/convert';
import { areaOfOneM2, countOf } from './workOutArea';
import { meetingOf } from './workOutWind';

/** The written numbers with one thing changed, and what that would mean. */
export interface SlipHypothesis {
  readonly id: EnvelopeSlipId;
  readonly label: string;
  /** "with 12.0 kn taken as 12.0 m/s": goes before "gives". */
  readonly condition: string;
  readonly change: Change;
}

type Hypothesis = (numbers: EnvelopeNumbers) => readonly SlipHypothesis[];

function said({ valueSi, unit }: WrittenNumber): string {
  return quantityIn(valueSi, unit);
}

/** The number in another unit, without the conversion that belongs to it. */
function readAs({ valueSi, unit }: WrittenNumber, other: Unit): number {
  return toSi(fromSi(valueSi, unit), other) / valueSi;
}

/** A speed whose number is right and whose unit is the other: both ways, and a conversion done the wrong way round. */
function speedIn(id: EnvelopeSlipId, other: 'kn' | 'km/h', name: string): Hypothesis {
  return ({ speed }) => {
    if (speed === null || (speed.unit !== other && speed.unit !== 'm/s')) return [];
    const taken: Unit = speed.unit === other ? 'm/s' : other;
    const factor = readAs(speed, taken);
    const as = (speedFactor: number, condition: string): SlipHypothesis => ({
      id,
      label: `${name} taken for m/s, or the other way round`,
      condition,
      change: { ...noChange, speedFactor },
    });
    const plain = as(factor, `${said(speed)} taken as ${quantityIn(speed.valueSi * factor, taken)}`);
    if (speed.unit === other) return [plain];
    const turned = as(
      1 / factor,
      `${said(speed)} turned into ${valueIn(speed.valueSi, other)} and taken as m/s again`,
    );
    return [plain, turned];
  };
}

function ofArea(id: EnvelopeSlipId, label: string, condition: string, areaFactor: number): SlipHypothesis {
  return { id, label, condition, change: { ...noChange, areaFactor } };
}

/** Diameter and radius mixed up, in d l or in π r². */
const radii: Hypothesis = ({ width, shape }) => {
  const rule = areaRuleOf(shape);
  if (width === null || rule === 'square' || rule === 'typed' || shape === 'plate') return [];
  const power = rule === 'disc' ? 2 : 1;
  return [
    ofArea(
      'radiusForDiameter',
      'radius taken for diameter',
      `the radius in place of ${said(width)}`,
      0.5 ** power,
    ),
    ofArea(
      'diameterForRadius',
      'diameter taken for radius',
      `${said(width)} taken as the radius`,
      2 ** power,
    ),
  ];
};

/** The skin in place of the area that meets the wind. */
const wetted: Hypothesis = ({ width, shape }) => {
  const rule = areaRuleOf(shape);
  if (width === null || shape === 'plate') return [];
  const label = 'a coefficient based on another area: the wetted one';
  if (shape === 'sphere')
    return [ofArea('wettedArea', label, 'the whole surface π d² in place of π/4 d²', 4)];
  return rule === 'widthTimesLength'
    ? [ofArea('wettedArea', label, 'the skin π d l in place of d l', Math.PI)]
    : [];
};

const chord: Hypothesis = ({ width, depth, shape }) =>
  width === null || depth === null || areaRuleOf(shape) !== 'widthTimesLength'
    ? []
    : [
        ofArea(
          'chordArea',
          'a coefficient based on another area: chord in place of thickness',
          `the chord of ${said(depth)} in place of ${said(width)}`,
          depth.valueSi / width.valueSi,
        ),
      ];

/** One size whose millimetres were taken for centimetres, or the other way round. */
const millimetres: Hypothesis = (numbers) => {
  const rule = areaRuleOf(numbers.shape);
  const sizes = rule === 'widthTimesLength' ? ([numbers.width, numbers.length] as const) : [numbers.width];
  return sizes.flatMap((size) => {
    if (size === null || (size.unit !== 'mm' && size.unit !== 'cm')) return [];
    const taken: Unit = size.unit === 'mm' ? 'cm' : 'mm';
    const factor = readAs(size, taken);
    const condition = `${said(size)} taken as ${quantityIn(size.valueSi * factor, taken)}`;
    const label = 'millimetres taken for centimetres, or the other way round';
    return [
      ofArea(
        'millimetresAsCentimetres',
        label,
        condition,
        rule === 'widthTimesLength' ? factor : factor ** 2,
      ),
    ];
  });
};

const counts: Hypothesis = (numbers) => {
  const count = countOf(numbers);
  if (count === 1) return [];
  const printed = valueIn(count, '1', { decimals: 0 });
  const change = { ...noChange, countFactor: 1 / count };
  return [{ id: 'countForgotten', label: 'the count forgotten', condition: `one of the ${printed}`, change }];
};

const halves: Hypothesis = () => [
  {
    id: 'halfForgotten',
    label: 'the half of ½ ρ V² forgotten',
    condition: 'ρ V² in place of ½ ρ V²',
    change: { ...noChange, pressureFactor: 2 },
  },
];

const horsepowers: Hypothesis = ({ horsepower }) => {
  if (horsepower === null || (horsepower.unit !== 'hp' && horsepower.unit !== 'PS')) return [];
  const other = horsepower.unit === 'hp' ? 'metric horsepower (735.5 W)' : 'mechanical horsepower (745.7 W)';
  return [
    {
      id: 'otherHorsepower',
      label: 'one horsepower taken for the other',
      condition: `${other} in place of ${horsepower.unit === 'hp' ? 'mechanical' : 'metric'} horsepower`,
      change: { ...noChange, isOtherHorsepower: true },
    },
  ];
};

const trueWind: Hypothesis = (numbers) => {
  const { speed } = numbers;
  if (speed === null || meetingOf(numbers, noChange)?.isWorkedOut !== true) return [];
  return [
    {
      id: 'trueForApparent',
      label: 'true wind taken for apparent',
      condition: `the true wind of ${said(speed)} taken as if it were met`,
      change: { ...noChange, isTrueAsMet: true },
    },
  ];
};

const powers: Hypothesis = (numbers) => {
  const { boatSpeed, powerKind, power, horsepower } = numbers;
  const hasPower = power !== null || horsepower !== null;
  if (boatSpeed === null || !hasPower || (meetingOf(numbers, noChange)?.angleRad ?? null) === null) return [];
  const change = { ...noChange, isOtherPower: true };
  return powerKind === 'track'
    ? [
        {
          id: 'airForTrack',
          label: 'air power taken for what the boat pays',
          condition:
            'the force times the wind speed in place of the force against the track times the boat speed',
          change,
        },
      ]
    : [
        {
          id: 'trackForAir',
          label: 'what the boat pays taken for air power',
          condition:
            'the force against the track times the boat speed in place of the force times the wind speed',
          change,
        },
      ];
};

/** Every slip that the written numbers leave room for. */
export function slipHypotheses(numbers: EnvelopeNumbers): readonly SlipHypothesis[] {
  const all: readonly Hypothesis[] = [
    speedIn('knotsForMs', 'kn', 'knots'),
    speedIn('kmhForMs', 'km/h', 'km/h'),
    radii,
    horsepowers,
    areaOfOneM2(numbers) === null ? () => [] : wetted,
    areaOfOneM2(numbers) === null ? () => [] : chord,
    trueWind,
    powers,
    counts,
    halves,
    millimetres,
  ];
  return all.flatMap((hypothesis) => hypothesis(numbers));
}
