import { columnDecimals, formatValue, printUnit } from '../../units/print';
import type { MethodEffect } from './methodEffects';

interface MethodTableProps {
  readonly name: string;
  readonly effects: readonly MethodEffect[];
}

/** Each method with its source, the total that it makes and how far that lies from the default's. */
export function MethodTable({ name, effects }: MethodTableProps) {
  const decimals = columnDecimals(
    effects.map(({ totalW }) => totalW),
    'W',
  );
  return (
    <table className="methods-table">
      <caption className="muted">{name}: total track power, and how far from the default</caption>
      <thead>
        <tr>
          <th scope="col">method</th>
          <th scope="col">total, {printUnit('W')}</th>
          <th scope="col">moves it by, {printUnit('W')}</th>
        </tr>
      </thead>
      <tbody>
        {effects.map(({ id, label, source, totalW, changeW, isDefault, isChosen }) => (
          <tr key={id} className={isChosen ? 'methods-chosen' : undefined}>
            <th scope="row">
              {label}
              {isChosen && <span className="methods-mark">, in use</span>}
              <span className="fine">{source}</span>
            </th>
            <td>{formatValue(totalW, 'W', { decimals })}</td>
            <td>{isDefault ? 'default' : moveText(changeW, decimals)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function moveText(changeW: number, decimals: number): string {
  const text = formatValue(changeW, 'W', { decimals });
  return changeW > 0 ? `+${text}` : text;
}
