import psychrolib from 'psychrolib';

/**
 * Published formulas that the model does not use. They are not the judge of any check: the checks carry numbers, and
 * a test shows that these formulas give those numbers.
 */

/**
 * CIPM-2007, density of moist air, kg/m3 (Picard, Davis, Glaser, Fujii, Metrologia 45 (2008) 149; constants read
 * second-hand, molar mass of dry air from memory).
 */
export function cipmDensityKgM3(temperatureC: number, relativeHumidity: number, pressurePa: number): number {
  const t = temperatureC;
  const T = t + 273.15;
  const p = pressurePa;
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t ** 2;
  const xv = (relativeHumidity * enhancement * cipmSaturationPa(temperatureC)) / p;
  const first =
    1.58123e-6 -
    2.9331e-8 * t +
    1.1043e-10 * t ** 2 +
    (5.707e-6 - 2.051e-8 * t) * xv +
    (1.9898e-4 - 2.376e-6 * t) * xv ** 2;
  const Z = 1 - (p / T) * first + (p / T) ** 2 * (1.83e-11 - 0.765e-8 * xv ** 2);
  const molarMassDry = 28.96546e-3;
  const molarMassWater = 18.01528e-3;
  return ((p * molarMassDry) / (Z * 8.314472 * T)) * (1 - xv * (1 - molarMassWater / molarMassDry));
}

/** Saturation vapour pressure of CIPM-2007, Pa. */
export function cipmSaturationPa(temperatureC: number): number {
  const T = temperatureC + 273.15;
  return Math.exp(1.2378847e-5 * T ** 2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T);
}

/** Buck 1996, saturation vapour pressure over water, Pa (from memory). */
export function buckSaturationPa(temperatureC: number): number {
  const t = temperatureC;
  return 611.21 * Math.exp(((18.678 - t / 234.5) * t) / (257.14 + t));
}

/** psychrolib 1.1.1 (ASHRAE Handbook Fundamentals 2017), density of moist air, kg/m3. */
export function psychrolibDensityKgM3(
  temperatureC: number,
  relativeHumidity: number,
  pressurePa: number,
): number {
  psychrolib.SetUnitSystem(psychrolib.SI);
  const humidityRatio = psychrolib.GetHumRatioFromRelHum(temperatureC, relativeHumidity, pressurePa);
  return psychrolib.GetMoistAirDensity(temperatureC, humidityRatio, pressurePa);
}

export function psychrolibSaturationPa(temperatureC: number): number {
  psychrolib.SetUnitSystem(psychrolib.SI);
  return psychrolib.GetSatVapPres(temperatureC);
}

/** Cheng 2013, J. Hydraul. Eng. 139, 602, smooth cylinder, Re below 2e5 (second-hand, two sources). */
export function chengDrag(Re: number): number {
  return 11 * Re ** -0.75 + 0.9 * (1 - Math.exp(-1000 / Re)) + 1.2 * (1 - Math.exp(-((Re / 4500) ** 0.7)));
}

/** Sucker and Brauer 1975, smooth cylinder, Re 1e-4 to 2e5 (second-hand through White 1991). */
export function suckerBrauerDrag(Re: number): number {
  return 1.18 + 6.8 / Re ** 0.89 + 1.96 / Re ** 0.5 - (0.0004 * Re) / (1 + 3.64e-7 * Re ** 2);
}

/** White, Viscous Fluid Flow: 1 + 10 / Re^(2/3), stated to 10 % for Re 1 to 2.5e5 (from memory). */
export function whiteDrag(Re: number): number {
  return 1 + 10 * Re ** (-2 / 3);
}
