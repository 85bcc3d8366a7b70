import {
  dragForceN,
  dynamicPressurePa,
  envelopeQuantities,
  powerW,
  speedFromForceMs,
  speedFromPowerMs,
} from '../../physics/envelope/envelopeArithmetic';
import { printed, type Formula, type Route } from './route';

const product = (a: string, b: string): string => `${a} × ${b}`;
const quotient = (a: string, b: string): string => `${a} / ${b}`;
const times = (a: number, b: number): number => a * b;
const over = (a: number, b: number): number => a / b;
const { pressure, dragArea, coefficient, force, power } = envelopeQuantities;

/** The lines of an envelope with how each is printed; those that end in Back solve for what is missing. */
export const lines = {
  pressure: {
    of: dynamicPressurePa,
    unit: 'Pa',
    equation: pressure.equation,
    show: (rho, v) => `½ × ${rho} × (${v})²`,
  },
  dragArea: { of: times, unit: 'm2', equation: dragArea.equation, show: product },
  force: { of: dragForceN, unit: 'N', equation: force.equation, show: product },
  power: { of: powerW, unit: 'W', equation: power.equation, show: product },
  speed: { of: over, unit: 'm/s', equation: 'V = P / F', show: quotient },
  forceBack: { of: over, unit: 'N', equation: 'F = P / V', show: quotient },
  dragAreaBack: { of: over, unit: 'm2', equation: 'CdA = F / q', show: quotient },
  areaBack: { of: over, unit: 'm2', equation: 'A = CdA / Cd', show: quotient },
  coefficientBack: { of: over, unit: '1', equation: coefficient.equation, show: quotient },
} as const satisfies Readonly<Record<string, Formula>>;

/** V = √(2 F / (ρ · CdA)), of the force and the density. */
export function speedFromForce(area: Route): Formula {
  return {
    of: (claim, rho) => speedFromForceMs(claim, rho, area.valueSi),
    unit: 'm/s',
    equation: 'V = √(2 F / (ρ · CdA))',
    show: (claim, rho) => `√(2 × ${claim} / (${rho} × ${printed(area)}))`,
  };
}

/** V = ∛(2 P / (ρ · CdA)), of the power and the density. */
export function speedFromPower(area: Route): Formula {
  return {
    of: (claim, rho) => speedFromPowerMs(claim, rho, area.valueSi),
    unit: 'm/s',
    equation: 'V = ∛(2 P / (ρ · CdA))',
    show: (claim, rho) => `∛(2 × ${claim} / (${rho} × ${printed(area)}))`,
  };
}
