import type { ApparentWind } from '../../physics/condition/sailingState';
import type { ConditionSummary } from '../../project/ledger/conditionSummary';
import { formatQuantity } from '../../units/print';
import { areUnitsUsual } from '../../units/shownUnits';

/** The apparent wind where people stand and where the instruments are: always in sight. */
export function ApparentWindLines({ summary }: { readonly summary: ConditionSummary }) {
  const { deck, masthead } = summary;
  const hasMinus = Math.min(deck.angleFromBowRad, masthead.angleFromBowRad) < 0;
  const isTight = hasMinus || !areUnitsUsual();
  return (
    <table className={isTight ? 'apparent-wind apparent-wind-tight' : 'apparent-wind'}>
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
        <WindLine where="deck" wind={deck} />
        <WindLine where="masthead" wind={masthead} />
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
