import type { BasisPart } from '../../project/ledger/ledgerTypes';
import { toSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { ChangedValue } from './ValueLine';

/** The course: each condition's hours, its share of the time, and the apparent wind at deck. */
export function ProfileFacts({ parts }: { readonly parts: readonly BasisPart[] }) {
  return (
    <table className="profile-parts">
      <caption className="muted">Hours and wind of the course</caption>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">condition</th>
          <th scope="col">hours</th>
          <th scope="col">share of the time</th>
        </tr>
      </thead>
      {parts.map(({ summary, hours, weight }) => (
        <tbody key={summary.condition.id}>
          <tr>
            <th scope="row">{summary.condition.name}</th>
            <td>
              {hours !== null && (
                <ChangedValue
                  label={`Hours of ${summary.condition.name}`}
                  text={formatQuantity(toSi(hours, 'h'), 'h')}
                  changedIn={{ pane: 'condition', field: `profile.${summary.condition.id}` }}
                />
              )}
            </td>
            <td className="muted">{formatQuantity(weight, '%')}</td>
          </tr>
          <tr className="fine">
            <td colSpan={3}>
              deck {formatQuantity(summary.deck.speedMs, 'kn')} at{' '}
              {formatQuantity(summary.deck.angleFromBowRad, 'deg')}, masthead{' '}
              {formatQuantity(summary.masthead.speedMs, 'kn')} at{' '}
              {formatQuantity(summary.masthead.angleFromBowRad, 'deg')}
            </td>
          </tr>
        </tbody>
      ))}
    </table>
  );
}
