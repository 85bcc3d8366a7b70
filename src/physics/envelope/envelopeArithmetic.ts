import type { Quantity } from '../quantity';

/**
 * The sums on the back of an envelope, one line each, and the same lines solved for the number that is missing.
 * Plain functions of SI values; a division by zero gives an infinity or NaN, which the caller sorts out.
 * Example: 1.2 kg/m3, 10 m/s, Cd 0.5 on 0.8 m2: q 60 Pa, F 24 N, P 240 W. Source: vector-mechanics.
 */
export function dynamicPressurePa(densityKgM3: number, speedMs: number): number {
  return (densityKgM3 / 2) * speedMs ** 2; // q = rho/2 V^2
}

export function dragForceN(pressurePa: number, dragAreaM2: number): number {
  return pressurePa * dragAreaM2; // F = q Cd A
}

/** With the speed that is met this is air power. */
export function powerW(forceN: number, speedMs: number): number {
  return forceN * speedMs; // P = F V
}

/** What the boat pays for a force along the apparent wind; negative when the wind comes from abaft the beam and pushes. */
export function trackPowerOfDragW(forceN: number, angleFromCourseRad: number, boatSpeedMs: number): number {
  return forceN * Math.cos(angleFromCourseRad) * boatSpeedMs; // P_t = F cos(b) V_b
}

export function reynoldsNumber(speedMs: number, widthM: number, kinematicViscosityM2S: number): number {
  return (speedMs * widthM) / kinematicViscosityM2S; // Re = V d / nu
}

/** Speed at which a drag area is met with a force, m/s. */
export function speedFromForceMs(forceN: number, densityKgM3: number, dragAreaM2: number): number {
  return Math.sqrt((2 * forceN) / (densityKgM3 * dragAreaM2)); // V = sqrt(2 F / (rho Cd A))
}

/** Speed at which a drag area takes an air power, m/s. */
export function speedFromPowerMs(airPowerW: number, densityKgM3: number, dragAreaM2: number): number {
  return Math.cbrt((2 * airPowerW) / (densityKgM3 * dragAreaM2)); // V = (2 P / (rho Cd A))^(1/3)
}

/** The lines of an envelope: symbol, name, unit and formula of each. */
export const envelopeQuantities = {
  apparentSpeed: {
    symbol: 'V',
    label: 'Wind speed met',
    unit: 'm/s',
    equation: 'V² = (W cos a + V_b)² + (W sin a)²',
    source: 'vector-mechanics',
  },
  pressure: {
    symbol: 'q',
    label: 'Dynamic pressure',
    unit: 'Pa',
    equation: 'q = ρ/2 · V²',
    source: 'vector-mechanics',
  },
  area: { symbol: 'A', label: 'Area', unit: 'm2', equation: 'A = n · d · l' },
  dragArea: { symbol: 'CdA', label: 'Drag area', unit: 'm2', equation: 'CdA = Cd · A' },
  coefficient: { symbol: 'Cd', label: 'Drag coefficient', unit: '1', equation: 'Cd = CdA / A' },
  reynolds: { symbol: 'Re', label: 'Reynolds number', unit: '1', equation: 'Re = V · d / ν' },
  force: { symbol: 'F', label: 'Force', unit: 'N', equation: 'F = q · CdA', source: 'vector-mechanics' },
  power: { symbol: 'P', label: 'Air power', unit: 'W', equation: 'P = F · V', source: 'vector-mechanics' },
  horsepower: { symbol: 'P', label: 'Horsepower', unit: 'W', equation: 'P = F · V' },
  trackPower: {
    symbol: 'P_t',
    label: 'Track power',
    unit: 'W',
    equation: 'P_t = F · cos b · V_b',
    source: 'vector-mechanics',
  },
} as const satisfies Readonly<Record<string, Quantity>>;
