import type { EnvelopeSpeedTable } from '../../project/envelope/envelopeCheck';
import { decimalsIn, unitSign, valueIn, valueRangeIn } from '../../units/printIn';

/** The same things in other winds. */
export function SpeedTable({ table: { title, speedUnit, rows } }: { readonly table: EnvelopeSpeedTable }) {
  const hasHandbook = rows.some(({ handbookAirPowerW }) => handbookAirPowerW !== null);
  const hasOwn = rows.some(({ envelopeAirPowerW }) => envelopeAirPowerW !== null);
  const speedDecimals = decimalsIn(
    rows.map(({ speedMs }) => speedMs),
    speedUnit,
  );
  return (
    <section aria-labelledby="envelope-speeds">
      <h3 id="envelope-speeds">{title}</h3>
      <table className="envelope-table">
        <thead>
          <tr>
            <th scope="col">wind, {unitSign(speedUnit)}</th>
            {hasOwn && <NumberHead>as written, W</NumberHead>}
            {hasHandbook && <NumberHead>handbook, W</NumberHead>}
            {hasHandbook && <NumberHead>low–high</NumberHead>}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ speedMs, isGiven, handbookAirPowerW, envelopeAirPowerW }) => (
            <tr key={speedMs} className={isGiven ? 'envelope-given' : undefined}>
              <th scope="row">{valueIn(speedMs, speedUnit, { decimals: Math.min(speedDecimals, 1) })}</th>
              {hasOwn && (
                <td className="envelope-number">
                  {envelopeAirPowerW === null ? '' : valueIn(envelopeAirPowerW, 'W')}
                </td>
              )}
              {hasHandbook && (
                <>
                  <td className="envelope-number">
                    {handbookAirPowerW === null ? '' : valueIn(handbookAirPowerW.best, 'W')}
                  </td>
                  <td className="envelope-number fine">
                    {handbookAirPowerW === null
                      ? ''
                      : valueRangeIn(handbookAirPowerW.low, handbookAirPowerW.high, 'W')}
                  </td>
                </>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function NumberHead({ children }: { readonly children: string }) {
  return (
    <th scope="col" className="envelope-number">
      {children}
    </th>
  );
}
