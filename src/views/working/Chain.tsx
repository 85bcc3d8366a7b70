import { useMemo } from 'react';
import type { FittingInput } from '../../physics/fitting/fittingInput';
import type { Project } from '../../project/file/schema';
import type { BasisPart, LedgerRow, ProjectLedger } from '../../project/ledger/ledgerTypes';
import { useAppStore } from '../../state/appStore';
import { columnDecimals, formatQuantity, formatRange, formatValue } from '../../units/print';
import { areUnitsUsual } from '../../units/shownUnits';
import { AxesTable } from './AxesTable';
import { DoubtTable } from './DoubtTable';
import { LineTable } from './LineTable';
import { MembersTable } from './MembersTable';
import { memberGroups } from './memberLines';
import { frameGroups, powerGroups } from './outcomeLines';
import { numberedSources } from './sourceNumbers';
import { validityText } from './validity';
import { WorkingChart } from './WorkingChart';
import { sidesOf, stateOf, type WorkingSide } from './workingSides';

interface ChainProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly row: LedgerRow;
  readonly part: BasisPart;
}

/** One condition's chain, then what the row's range is made of, the chart and the sources. */
export function Chain({ project, ledger, row, part }: ChainProps) {
  const shown = useAppStore((state) => state.shown);
  const { condition } = part.summary;
  const state = useMemo(() => stateOf(project, condition.id), [project, condition.id]);
  const sides = useMemo(
    () => sidesOf(project, row, condition.id, shown),
    [project, row, condition.id, shown],
  );
  if (state === null) return null;
  const chain = memberGroups(sides, state, project.methods);
  const power = powerGroups(sides, state);
  const frames = frameGroups(sides, state);
  const sources = numberedSources([...chain, ...power]);
  const names = sides.map(({ name }) => name);
  // A removed fitting has no doubts of its own; what it was is then judged.
  const judged = [...sides].reverse().find(({ trace }) => trace !== null);
  const isPriced = power.some(({ lines }) => lines.some(({ key }) => key === 'fullPriceW'));
  return (
    <>
      <p className="fine">
        {chainText(sides, condition.name)}
        {ledger.plan !== null && !row.isChanged && unchangedText(row)}
        {!areUnitsUsual() && ' The working is in SI; its answers stand in your units too.'}
      </p>
      <LineTable caption="From the wind to the force" groups={chain} sideNames={names} sources={sources} />
      <WorkingChart sides={sides} surface={project.methods.fairing} state={state} />
      {sides.map((side) => (
        <SideTables key={side.name} side={side} isOnly={sides.length === 1} />
      ))}
      <LineTable caption="From the force to the watts" groups={power} sideNames={names} sources={sources} />
      {!isPriced && (
        <p className="fine">
          Full price: the condition gives no price for side force or heel; taken as zero.
        </p>
      )}
      <details className="working-frames">
        <summary>force and moment in both frames</summary>
        <LineTable caption="Force and moment" groups={frames} sideNames={names} sources={sources} />
      </details>
      {judged !== undefined && <Doubts project={project} ledger={ledger} row={row} judged={judged} />}
      <section className="working-sources" aria-label="Validity and sources">
        {shapesOf(sides).map((shape) => (
          <p key={shape.kind} className="fine">
            {validityText(shape)}
          </p>
        ))}
        <ol>
          {sources.map(({ id, number, title, confidence }) => (
            <li key={id} className="fine">
              [{number}] {title} ({confidence})
            </li>
          ))}
        </ol>
      </section>
    </>
  );
}

/** Which member the chain is about. */
function chainText(sides: readonly WorkingSide[], conditionName: string): string {
  const side = sides.find(({ lead }) => lead !== null);
  if (side?.trace === undefined || side.trace === null) return `In ${conditionName}: nothing in the wind.`;
  const count = side.trace.members.length;
  if (count <= 1) return `In ${conditionName}.`;
  const [number, all] = [side.leadNumber, count].map((n) => formatValue(n, '1', { decimals: 0 }));
  return `In ${conditionName}: member ${number ?? ''} of ${all ?? ''}, the one with the largest force; the others below.`;
}

function shapesOf(sides: readonly WorkingSide[]): FittingInput['shape'][] {
  const shapes = sides.flatMap(({ input }) => (input === null ? [] : [input.shape]));
  return shapes.filter((shape, i) => shapes.findIndex(({ kind }) => kind === shape.kind) === i);
}

function SideTables({ side, isOnly }: { readonly side: WorkingSide; readonly isOnly: boolean }) {
  const { name, input, trace } = side;
  const which = isOnly ? '' : `, ${name}`;
  if (input === null || trace === null) {
    return <p className="fine">{name}: removed by the plan; nothing left in the wind.</p>;
  }
  return (
    <>
      {input.shape.kind === 'bluffBody' && <AxesTable shape={input.shape} caption={`three axes${which}`} />}
      {trace.members.length > 1 && (
        <MembersTable members={trace.members} caption={`members, deployed${which}`} />
      )}
    </>
  );
}

interface DoubtsProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly row: LedgerRow;
  readonly judged: WorkingSide;
}

/** The ranges are the ledger's own: over the course profile where that is what the ledger shows. */
function Doubts({ project, ledger, row, judged }: DoubtsProps) {
  const which = row.isChanged ? `, ${judged.name}` : '';
  const over = ledger.parts.length > 1 ? ', over the course profile' : '';
  const { change, ranges } = row.saving;
  const { low, high } = ranges.item.trackPowerW;
  const place = { decimals: columnDecimals([change.trackPowerW, low, high], 'W') };
  return (
    <>
      <DoubtTable
        result={judged.result}
        fittings={project.fittings}
        caption={`change of track power by each doubt${which}${over}`}
      />
      {row.isChanged && (
        <p className={change.trackPowerW < 0 ? 'working-saving working-added' : 'working-saving'}>
          Saving {formatQuantity(change.trackPowerW, 'W', place)}{' '}
          <span className="working-range">{formatRange(low, high, 'W', place)}</span>
          <span className="muted">, what both sides share cancelled</span>
        </p>
      )}
    </>
  );
}

function unchangedText({ withheldItemIds }: LedgerRow): string {
  return withheldItemIds.length > 0
    ? ' An item of the plan waits for a reason, so after is before.'
    : ' The plan leaves it as it is: after is before.';
}
