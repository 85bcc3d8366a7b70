import type { ApparentWind } from '../../physics/condition/sailingState';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import { formatQuantity } from '../../units/print';
import { areUnitsUsual } from '../../units/shownUnits';

/** The apparent wind where people stand and where the instruments are: always in sight. */
export function ApparentWindLines({ summary }: { readonly summary: ConditionSummary }) {
  return (
    <table className={areUnitsUsual() ? 'apparent-wind' : 'apparent-wind apparent-wind-tight'}>
      <caption className="muted">
        Apparent wind, <span className="fine">air {formatQuantity(summary.densityKgM3, 'kg/m3')}</span>
      </caption>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">where</th>
          <th scope="col">height</th>
          <th scope="col">speed</th>
          <th scope="col">angle from the bow</th>
        </tr>
      </thead>
      <tbody>
        <WindLine where="deck" wind={summary.deck} />
        <WindLine where="masthead" wind={summary.masthead} />
      </tbody>
    </table>
  );
}

function WindLine({ where, wind }: { readonly where: string; readonly wind: ApparentWind }) {
  return (
    <tr>
      <th scope="row">{where}</th>
      <td className="muted">{formatQuantity(wind.heightM, 'm')}</td>
      <td>{formatQuantity(wind.speedMs, 'kn')}</td>
      <td>{formatQuantity(wind.angleFromBowRad, 'deg')}</td>
    </tr>
  );
}
