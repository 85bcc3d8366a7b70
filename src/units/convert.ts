import { definitionOf, type Unit } from './unitTable';

/** `valueSi = value × size of the unit + offset`: 22 kn is 11.317778 m/s, 20 °C is 293.15 K. */
export function toSi(value: number, unit: Unit): number {
  const { numerator, denominator, offset = 0 } = definitionOf(unit);
  return (value * numerator) / denominator + offset;
}

/** The inverse of {@link toSi}. */
export function fromSi(valueSi: number, unit: Unit): number {
  const { numerator, denominator, offset = 0 } = definitionOf(unit);
  return ((valueSi - offset) * denominator) / numerator;
}
