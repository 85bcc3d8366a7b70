import type { Project } from '../../project/file/schema';
import type { PlanAccount, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { massText, momentText, moneyText } from '../../ui/balanceTexts';
import { formatQuantity, formatRange } from '../../units/print';

interface PlanSumsProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly account: PlanAccount;
}

/** What the counted items bring and take together; and how the plan stands against another. */
export function PlanSums({ project, ledger, account }: PlanSumsProps) {
  const { massChangeKg, momentXKgM, momentYKgM, momentZKgM, massWithoutPlaceKg, cost } = account.balance;
  return (
    <section className="plans-sums" aria-label="Sums of the plan">
      <h3 className="plans-subtitle">What is counted</h3>
      <p>
        {massText(massChangeKg)}; {moneyText(cost, project.currency)}.
      </p>
      <p>
        Moments of the mass about the boat's origin, amidships in the waterplane: {momentText(momentXKgM)}{' '}
        forward, {momentText(momentYKgM)} to port, {momentText(momentZKgM)} up.
        {massWithoutPlaceKg !== 0 && ` ${massText(massWithoutPlaceKg)} has no place and is in no moment.`}
      </p>
      {account.isTogetherNamed && (
        <p>
          Together: {formatQuantity(account.together.change.trackPowerW, 'W')} of the saving comes from what
          the items do to each other, so the savings alone do not add up to the total.
        </p>
      )}
      <AgainstLine project={project} ledger={ledger} account={account} />
    </section>
  );
}

/** The difference to the plan compared with: its own range, so that errors common to both cancel. */
function AgainstLine({ project, ledger, account }: PlanSumsProps) {
  const other = ledger.against;
  const otherPlan = project.plans.find(({ id }) => id === other?.planId);
  if (other === null || otherPlan === undefined) return null;
  const { saving } = ledger.forces;
  const savedW = saving.change.trackPowerW;
  const { low, high } = saving.ranges.item.trackPowerW;
  const isSure = low > 0 || high < 0;
  const massKg = account.balance.massChangeKg - other.balance.massChangeKg;
  const cost = account.balance.cost - other.balance.cost;
  return (
    <p className="plans-against">
      <strong>Against {otherPlan.name}:</strong> saves {formatQuantity(Math.abs(savedW), 'W')}{' '}
      {savedW < 0 ? 'less' : 'more'} ({formatRange(low, high, 'W')} by the fittings
      {isSure ? '' : ', so the order of the two is not sure'}), {massText(massKg)},{' '}
      {cost === 0
        ? 'the same cost'
        : `${moneyText(Math.abs(cost), project.currency)} ${cost < 0 ? 'less' : 'more'}`}
      .
    </p>
  );
}
