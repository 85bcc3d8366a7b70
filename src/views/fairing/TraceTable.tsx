import type { Quantity } from '../../physics/quantity';
import { quantityIn } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';

/** One column: what it is of, and its numbers by name. */
export interface TraceColumn {
  readonly head: string;
  readonly values: Readonly<Record<string, number | null>>;
}

export interface TraceTableProps {
  readonly caption: string;
  readonly quantities: Readonly<Record<string, Quantity>>;
  /** Which of them, in this order. */
  readonly names: readonly string[];
  readonly columns: readonly TraceColumn[];
}

/** Units in which a designer reads what the core keeps in SI. */
const readIn: Readonly<Record<string, Unit>> = {
  wallM: 'mm',
  chordM: 'mm',
  thicknessM: 'mm',
  pivotM: 'mm',
  massCentreM: 'mm',
  aerodynamicCentreM: 'mm',
  endClearanceM: 'mm',
  neededClearanceM: 'mm',
  weakM4: 'cm4',
  areaM2: 'cm2',
  eulerLoadN: 'kN',
  yieldLoadN: 'kN',
  upperBoundN: 'kN',
  modulusPa: 'GPa',
  yieldStressPa: 'MPa',
  residualRad: 'deg',
  hangAngleRad: 'deg',
};

/** Numbers of the working with their symbols, named by the core's own table of quantities. */
export function TraceTable({ caption, quantities, names, columns }: TraceTableProps) {
  return (
    <div className="bench-scroll" tabIndex={0} role="region" aria-label={caption}>
      <table className="bench-table bench-trace">
        <caption className="bench-caption">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">quantity</th>
            {columns.map(({ head }) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {names.map((name) => {
            const quantity = quantities[name];
            if (quantity === undefined) return null;
            return (
              <tr key={name}>
                <th scope="row">
                  {quantity.label}
                  {quantity.equation !== undefined && <span className="fine">{quantity.equation}</span>}
                </th>
                {columns.map(({ head, values }) => (
                  <td key={head}>{valueText(values[name], readIn[name] ?? quantity.unit)}</td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

function valueText(value: number | null | undefined, unit: Unit): string {
  return value === null || value === undefined ? 'not known' : quantityIn(value, unit);
}
