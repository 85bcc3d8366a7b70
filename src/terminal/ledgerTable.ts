import type { Project } from '../project/file/schema';
import type { ProjectLedger } from '../project/ledger/ledgerTypes';
import { cautions } from '../project/wording/cautions';
import { exclusionText } from '../project/wording/noReason';
import { noticeText } from '../project/wording/noticeText';
import { formatQuantity } from '../units/print';
import { conditionLines } from './conditionLines';
import { formatCount } from './figures';
import { footnoteLines, footnotesOf } from './footnotes';
import { planLines } from './planTable';
import { hasTwoSides, rowTable } from './rowTable';
import { safeLine } from './safeText';
import { wrap } from './textTable';
import { totalsTable } from './totalsTable';

/** The ledger for people, line by line, nothing in it that could disturb a terminal. */
export function ledgerTable(project: Project, ledger: ProjectLedger): string[] {
  const footnotes = footnotesOf(ledger);
  const sections: readonly (readonly string[])[] = [
    titleLines(project, ledger),
    ledger.parts.flatMap(conditionLines),
    rowTable(ledger, footnotes),
    [...keyLines(project, ledger), ...leftOutLines(ledger)],
    totalsTable(ledger),
    lossLines(ledger),
    ...[ledger.plan, ledger.against].map((account) => (account === null ? [] : planLines(project, account))),
    [...ledger.notices.flatMap((notice) => wrap(noticeText(notice))), ...footnoteLines(footnotes)],
    cautions.flatMap((caution) => wrap(caution)),
  ];
  return sections
    .filter((lines) => lines.length > 0)
    .flatMap((lines, i) => [...(i === 0 ? [] : ['']), ...lines.map(safeLine)]);
}

function titleLines(project: Project, ledger: ProjectLedger): string[] {
  const name = (id: string | null): string =>
    id === null ? 'as sailed' : `plan ${project.plans.find((plan) => plan.id === id)?.name ?? id}`;
  const { planId, againstPlanId } = ledger.question;
  const profile = ledger.question.basis.kind === 'profile' ? project.profile : null;
  return [
    `${project.name}: drag ledger of ${project.boat.name}${profile === null ? '' : `, course profile ${profile.name}`}`,
    ...(hasTwoSides(ledger) ? [`Before: ${name(againstPlanId)}. After: ${name(planId)}.`] : []),
  ];
}

/** How to read the columns, and the defaults that stand behind them. */
function keyLines(project: Project, { hasFullPrice }: ProjectLedger): string[] {
  const lines = [
    'Force: newtons against the track. Track: track power, what the boat pays. Air: air power. 90 % range of the track power over the doubts of the fittings; wind and air density are apart, in the totals. ~: doubt could put the next in rank first.',
  ];
  if (!hasFullPrice) lines.push('Side force and heel carry no price here: both prices are zero.');
  if (project.boat.centreOfLateralResistanceM === null) {
    lines.push(
      'Heeling moment: about a point amidships, 0.4 of the draught down; no centre of lateral resistance is given.',
    );
  }
  return lines.flatMap((line) => wrap(line));
}

function leftOutLines({ rows }: ProjectLedger): string[] {
  return rows.flatMap(({ number, fitting, excludedReason }) =>
    excludedReason === null
      ? []
      : wrap(
          `Left out of the sums: ${formatCount(number)} ${fitting.name} (${exclusionText(excludedReason)})`,
        ),
  );
}

function lossLines({ losses }: ProjectLedger): string[] {
  if (losses.losses.length === 0) return ['Losses against a named reference: none.'];
  return [
    'Losses against a named reference, never added to the forces',
    ...losses.losses.map(
      ({ label, reference, result }) =>
        `  ${label}, against ${reference}: ${formatQuantity(result.outcome.trackPowerW, 'W')}`,
    ),
    `  Sum of the losses: ${formatQuantity(losses.total.outcome.trackPowerW, 'W')}`,
  ];
}
