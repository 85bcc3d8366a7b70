import type { ProjectCondition, ProjectMethods } from '../../project/file/schema';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import { toSi } from '../../units/convert';
import { formatPlain } from '../../units/plain';
import { formatQuantity } from '../../units/print';

export interface ConditionLine {
  readonly label: string;
  readonly text: string;
  /** Where the value is changed; null for one that follows from others. */
  readonly changedIn: ChangePlace | null;
}

/** A field of the condition editor by its path, or the methods. */
export type ChangePlace =
  { readonly pane: 'condition'; readonly field: string } | { readonly pane: 'methods' };

function inField(field: string): ChangePlace {
  return { pane: 'condition', field };
}

/** What a condition was given as, in lines, with the true wind solved where the instruments were read. */
export function conditionLines(
  { condition, trueWindAt10Ms, trueWindAngleRad }: ConditionSummary,
  windLaw: ProjectMethods['windLaw'],
): ConditionLine[] {
  const { air, tack, wind } = condition;
  /** Solved from a reading, the true wind is an answer. */
  const given = (field: string): ChangePlace | null => (wind.kind === 'true' ? inField(field) : null);
  return [
    ...readingLines(condition),
    {
      label: 'True wind',
      text: `${formatQuantity(trueWindAt10Ms, 'kn')} at 10 m`,
      changedIn: given('wind.speedMs'),
    },
    {
      label: 'Wind angle',
      text: `${formatQuantity(trueWindAngleRad, 'deg')} ${tack}`,
      changedIn: given('wind.angle'),
    },
    {
      label: 'Boat speed',
      text: formatQuantity(condition.boatSpeedMs, 'kn'),
      changedIn: inField('boatSpeedMs'),
    },
    { label: 'Heel', text: heelText(condition), changedIn: inField('heelDeg') },
    { label: 'Leeway', text: degrees(condition.leewayDeg), changedIn: inField('leewayDeg') },
    ...(condition.riseM === 0
      ? []
      : [{ label: 'Rise', text: formatQuantity(condition.riseM, 'm'), changedIn: inField('riseM') }]),
    {
      label: 'Air',
      text: [
        formatQuantity(toSi(air.temperatureC, 'C'), 'C'),
        formatQuantity(air.pressurePa, 'hPa'),
        formatQuantity(air.relativeHumidity, '%', { decimals: 0 }),
      ].join(', '),
      changedIn: inField('air.temperatureC'),
    },
    { label: 'Wind law', text: windLawText(windLaw), changedIn: { pane: 'methods' } },
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
      changedIn: inField('wind.speedMs'),
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
