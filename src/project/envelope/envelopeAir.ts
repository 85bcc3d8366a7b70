import { airOf, dynamicViscosityPaS, type Air } from '../../physics/air/air';
import type { EnvelopeNumbers } from './readEnvelope';
import type { Route } from './route';
import { exactRoute } from './route';
import { quantityIn } from '../../units/printIn';

const standardC = 15;
const zeroCelsiusK = 273.15;
const standardPressurePa = 101_325;

/** What people take for the density of air without saying so: 1.2 to 1.23 kg/m³ (common practice, no source). */
const densityAsTaken = { lowSi: 1.2, highSi: 1.23 } as const;

/** Air as written, or dry standard air at the temperature written. */
export function envelopeAir({ density, temperature }: EnvelopeNumbers): Air {
  const temperatureC = temperature === null ? standardC : temperature.valueSi - zeroCelsiusK;
  const air = airOf({ temperatureC, pressurePa: standardPressurePa, relativeHumidity: 0 });
  if (density === null) return air;
  const viscosity = dynamicViscosityPaS(air.temperatureK);
  return { ...air, densityKgM3: density.valueSi, kinematicViscosityM2S: viscosity / density.valueSi };
}

/** Densities that are not air's at any weather near the sea. */
export function isAir({ density }: EnvelopeNumbers): boolean {
  return density === null || (density.valueSi >= 0.9 && density.valueSi <= 1.5);
}

export function densityRoute(numbers: EnvelopeNumbers): Route {
  const { density, temperature } = numbers;
  const { densityKgM3 } = envelopeAir(numbers);
  const route = exactRoute(densityKgM3, 'kg/m3', density === null ? [] : ['density']);
  return density === null && temperature === null ? { ...route, ...densityAsTaken } : route;
}

/** What was taken for the air because nothing was written; null when the density was. */
export function airAssumption(numbers: EnvelopeNumbers): string | null {
  if (numbers.density !== null) return null;
  const { densityKgM3 } = envelopeAir(numbers);
  const density = quantityIn(densityKgM3, 'kg/m3', { decimals: 3 });
  return numbers.temperature === null
    ? `The density is not written: ${density} is taken, standard air at 15 °C. A claim worked with 1.20 to 1.23 agrees too.`
    : `The density is not written: ${density} is taken, dry air of that temperature at standard pressure.`;
}
