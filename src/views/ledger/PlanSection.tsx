import { memo } from 'react';
import type { Saving } from '../../physics/ledger/ledgerSums';
import type { Project, RefitItem } from '../../project/file/schema';
import type { ItemAccount, PlanAccount, PlanBalance } from '../../project/ledger/ledgerTypes';
import { useAppStore } from '../../state/appStore';
import { massText, momentText, moneyText } from '../../ui/balanceTexts';
import { columnDecimals, formatValue, formatValueRange } from '../../units/print';
import { flagLetters } from './flagLetters';
import { shortUnit } from './columnWidths';
import { savingTone } from '../../ui/savingTone';
import { itemCautions, planHeadingId, statusText } from './planTexts';

interface PlanSectionProps {
  readonly project: Project;
  readonly account: PlanAccount;
}

/** A refit plan item by item, against the boat as sailed: what counts, what waits, and what each takes and gives. */
export const PlanSection = memo(function PlanSection({ project, account }: PlanSectionProps) {
  const plan = project.plans.find(({ id }) => id === account.planId);
  if (plan === undefined) return null;
  const decimals = columnDecimals(account.items.flatMap(powersOf), 'W');
  return (
    <section className="plan-section" aria-label={`Refit plan ${plan.name}`}>
      <h2 id={planHeadingId(plan.id)} tabIndex={-1}>
        {plan.name} <span className="muted">its items in their order, against the boat as sailed</span>
      </h2>
      {plan.note !== '' && <p className="plan-note muted">{plan.note}</p>}
      <div className="plan-scroll" tabIndex={0} role="group" aria-label={`Items of ${plan.name}`}>
        <table className="plan-table">
          <PlanHead currency={project.currency} />
          <tbody>
            {account.items.map((item) => (
              <ItemRow
                key={item.item.id}
                account={item}
                number={numberOf(project, item.item)}
                decimals={decimals}
              />
            ))}
            {account.isTogetherNamed && <TogetherRow together={account.together} decimals={decimals} />}
          </tbody>
        </table>
      </div>
      <p>
        <button
          type="button"
          className="plain-action plan-open"
          onClick={() => {
            useAppStore.getState().choosePlan(plan.id);
            useAppStore.getState().showPane('plan');
          }}
        >
          Change {plan.name}
        </button>
      </p>
      <BalanceText balance={account.balance} currency={project.currency} />
    </section>
  );
});

function powersOf({ savingInOrder, savingAlone }: ItemAccount): number[] {
  return [savingInOrder, savingAlone].flatMap((saving) =>
    saving === null ? [] : [saving.change.trackPowerW],
  );
}

function numberOf(project: Project, { fittingId }: RefitItem): string {
  const index = project.fittings.findIndex(({ id }) => id === fittingId);
  return index < 0 ? '' : formatValue(index + 1, '1', { decimals: 0 });
}

function PlanHead({ currency }: { readonly currency: string }) {
  return (
    <thead>
      <tr>
        <th scope="col" className="number">
          <span className="visually-hidden">number of the fitting</span>
        </th>
        <th scope="col">item</th>
        <th scope="col">fitting</th>
        <th scope="col" className="number">
          saves
          <span className="head-unit">{shortUnit('W')}</span>
        </th>
        <th scope="col">
          <span className="visually-hidden">spread of the saving, {shortUnit('W')}</span>
        </th>
        <th scope="col" className="number">
          alone
          <span className="head-unit">{shortUnit('W')}</span>
        </th>
        <th
          scope="col"
          className="number"
          title="side force that the item takes away; negative adds side force"
        >
          side saved
          <span className="head-unit">{shortUnit('N')}</span>
        </th>
        <th scope="col" className="number">
          mass
          <span className="head-unit">{shortUnit('kg')}</span>
        </th>
        <th scope="col" className="number">
          cost
          <span className="head-unit">{currency}</span>
        </th>
        <th scope="col">
          <span className="visually-hidden">flags</span>
        </th>
      </tr>
    </thead>
  );
}

interface ItemRowProps {
  readonly account: ItemAccount;
  readonly number: string;
  readonly decimals: number;
}

function ItemRow({ account, number, decimals }: ItemRowProps) {
  const { item, fitting, status, savingInOrder, savingAlone } = account;
  const isCounted = status === 'counted';
  const cautions = itemCautions(account);
  return (
    <tr className={isCounted ? 'plan-item' : 'plan-item not-counted'}>
      <td className="number muted">{number}</td>
      <th scope="row">
        {item.name}
        <span className={isCounted ? 'item-status muted' : 'item-status'}>{statusText(account)}</span>
        {cautions !== '' && <span className="item-status muted">{cautions}</span>}
      </th>
      <td>{fitting?.name ?? ''}</td>
      <SavingCells saving={savingInOrder} decimals={decimals} isCounted={isCounted} />
      <td className="number muted">
        {savingAlone === null ? '' : formatValue(savingAlone.change.trackPowerW, 'W', { decimals })}
      </td>
      <td className="number">
        {savingInOrder === null ? '' : formatValue(savingInOrder.change.sideForceN, 'N')}
      </td>
      <td className="number">{item.massChangeKg === 0 ? '' : formatValue(item.massChangeKg, 'kg')}</td>
      <td className="number">{item.cost === 0 ? '' : formatValue(item.cost, '1', { decimals: 0 })}</td>
      <td className="column-flags">
        {flagLetters(item.flags).map(({ letter, words }) => (
          <abbr key={letter} title={words}>
            {letter}
          </abbr>
        ))}
      </td>
    </tr>
  );
}

interface SavingCellsProps {
  readonly saving: Saving | null;
  readonly decimals: number;
  readonly isCounted: boolean;
}

function SavingCells({ saving, decimals, isCounted }: SavingCellsProps) {
  if (saving === null) {
    return (
      <>
        <td />
        <td />
      </>
    );
  }
  const savedW = saving.change.trackPowerW;
  const { low, high } = saving.ranges.item.trackPowerW;
  const tone = isCounted ? savingTone(savedW) : 'muted';
  return (
    <>
      <td className={`number ${tone}`}>{formatValue(savedW, 'W', { decimals })}</td>
      <td className="fine">{formatValueRange(low, high, 'W', { decimals })}</td>
    </>
  );
}

function TogetherRow({ together, decimals }: { readonly together: Saving; readonly decimals: number }) {
  return (
    <tr className="plan-item">
      <td />
      <th scope="row">
        together
        <span className="item-status muted">what the items do to each other</span>
      </th>
      <td />
      <SavingCells saving={together} decimals={decimals} isCounted />
      <td />
      <td className="number">{formatValue(together.change.sideForceN, 'N')}</td>
      <td colSpan={3} />
    </tr>
  );
}

function BalanceText({ balance, currency }: { readonly balance: PlanBalance; readonly currency: string }) {
  const { massChangeKg, momentXKgM, momentYKgM, momentZKgM, massWithoutPlaceKg, cost } = balance;
  return (
    <p className="plan-balance">
      What is counted: {massText(massChangeKg)} and {moneyText(cost, currency)}. Moments of the mass about
      amidships in the waterplane: {momentText(momentXKgM)} forward, {momentText(momentYKgM)} to port,{' '}
      {momentText(momentZKgM)} upward.
      {massWithoutPlaceKg !== 0 && ` ${massText(massWithoutPlaceKg)} has no place and is in no moment.`}
    </p>
  );
}
