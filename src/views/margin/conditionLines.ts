import type { ProjectCondition, ProjectMethods } from '../../project/file/schema';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import { toSi } from '../../units/convert';
import { formatPlain } from '../../units/plain';
import { formatQuantity } from '../../units/print';

export interface ConditionLine {
  readonly label: string;
  readonly text: string;
}

/** What a condition was given as, in lines, with the true wind solved where the instruments were read. */
export function conditionLines(
  { condition, trueWindAt10Ms, trueWindAngleRad }: ConditionSummary,
  windLaw: ProjectMethods['windLaw'],
): ConditionLine[] {
  const { air, tack } = condition;
  return [
    ...readingLines(condition),
    { label: 'True wind', text: `${formatQuantity(trueWindAt10Ms, 'kn')} at 10 m` },
    { label: 'Wind angle', text: `${formatQuantity(trueWindAngleRad, 'deg')} ${tack}` },
    { label: 'Boat speed', text: formatQuantity(condition.boatSpeedMs, 'kn') },
    { label: 'Heel', text: heelText(condition) },
    { label: 'Leeway', text: degrees(condition.leewayDeg) },
    ...(condition.riseM === 0 ? [] : [{ label: 'Rise', text: formatQuantity(condition.riseM, 'm') }]),
    {
      label: 'Air',
      text: [
        formatQuantity(toSi(air.temperatureC, 'C'), 'C'),
        formatQuantity(air.pressurePa, 'hPa'),
        formatQuantity(air.relativeHumidity, '%', { decimals: 0 }),
      ].join(', '),
    },
    { label: 'Wind law', text: windLawText(windLaw) },
  ];
}

function degrees(angleDeg: number): string {
  return formatQuantity(toSi(angleDeg, 'deg'), 'deg');
}

function readingLines({ wind, tack }: ProjectCondition): ConditionLine[] {
  if (wind.kind === 'true') return [];
  const height = `${formatQuantity(wind.heightUpMastM, 'm')} up the mast`;
  return [
    {
      label: 'Instruments',
      text: `${formatQuantity(wind.speedMs, 'kn')} at ${degrees(wind.angleFromBowDeg)} ${tack}, ${height}`,
    },
  ];
}

function heelText({ heelDeg }: ProjectCondition): string {
  return heelDeg < 0 ? `${degrees(-heelDeg)} to windward` : degrees(heelDeg);
}

function windLawText(law: ProjectMethods['windLaw']): string {
  switch (law.kind) {
    case 'log':
      return `log, Charnock ${formatPlain(law.charnock)}`;
    case 'power':
      return `power, exponent ${formatPlain(law.exponent)}`;
    case 'uniform':
      return 'uniform';
  }
}
