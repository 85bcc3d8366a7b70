import { bodyAxes } from '../../physics/body/threeAxisBody';
import type { BluffBodyShape } from '../../physics/fitting/fittingInput';
import { formatValue, formatValueRange } from '../../units/print';

const axisNames = ['fore and aft', 'athwart', 'vertical'] as const;
const axisKeys = ['x', 'y', 'z'] as const;
const two = { decimals: 2 };

interface AxesTableProps {
  readonly shape: BluffBodyShape;
  readonly caption: string;
}

/** A body's frontal areas and coefficients along the three axes of the boat, with where each came from. */
export function AxesTable({ shape, caption }: AxesTableProps) {
  return (
    <table className="working-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">axis of the boat</th>
          <th scope="col">
            <i>A</i> m²
          </th>
          <th scope="col">
            <i>C</i>
          </th>
          <th scope="col">low–high</th>
        </tr>
      </thead>
      <tbody>
        {bodyAxes(shape).map(({ areaM2, coefficient }, i) => {
          const typed = shape.coefficients[axisKeys[i] ?? 'x'];
          return (
            <tr key={axisNames[i]}>
              <th scope="row">
                {axisNames[i]}
                <span className="working-note">
                  {typed === null
                    ? 'handbook’s cube, on the frontal area'
                    : `typed; on ${typed.areaBase}; ${typed.source === '' ? 'no source given' : typed.source}`}
                </span>
              </th>
              <td>{formatValue(areaM2, 'm2')}</td>
              <td>{formatValue(coefficient.best, '1', two)}</td>
              <td>{formatValueRange(coefficient.low, coefficient.high, '1', two)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
