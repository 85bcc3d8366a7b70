import type { PowerScale } from '../../charts/ledgerBarScale';
import { printUnit } from '../../units/print';
import { hasUnitBeside, headText, shortUnit } from './columnWidths';
import { columnHeads, isInSight, stateOf, type ColumnId } from './ledgerColumns';
import type { RowSetting } from './rowSetting';

interface LedgerHeadProps {
  readonly setting: RowSetting;
  /** Its place among all rows, where not all are drawn. */
  readonly rowIndex: number | undefined;
}

/** Heads in lower case, the unit once under each; over the bars stands their scale. */
export function LedgerHead({ setting, rowIndex }: LedgerHeadProps) {
  return (
    <thead role="rowgroup">
      <tr role="row" aria-rowindex={rowIndex}>
        <th role="columnheader" scope="col" className="column-number">
          <span className="visually-hidden">number</span>
        </th>
        <th role="columnheader" scope="col" className="column-name">
          fitting and size
        </th>
        <th role="columnheader" scope="col" className="column-flags">
          <span className="visually-hidden">flags</span>
        </th>
        {setting.columns.map((id) =>
          id === 'bar' ? (
            <th key={id} scope="col" className="column-bar">
              <span className="bar-title">{barTitle()}</span>
              <AxisLabels scale={setting.scale} />
            </th>
          ) : (
            <Head key={id} id={id} setting={setting} />
          ),
        )}
      </tr>
    </thead>
  );
}

/** The axis has no room for a unit of several words. */
function barTitle(): string {
  const unit = printUnit('W');
  return unit.includes('(') ? `${columnHeads.bar.name}, ${unit}` : columnHeads.bar.name;
}

const leftAligned: readonly ColumnId[] = ['coefficientSpread', 'regime', 'spread', 'savingSpread', 'doubts'];

/** Name, unit, and the state where two are in sight. */
function Head({ id, setting }: { readonly id: ColumnId; readonly setting: RowSetting }) {
  const { name, explained, unit, hasState } = columnHeads[id];
  const { shown, hasPlan } = setting;
  if (!isInSight(id, shown)) return <td role="cell" className={`column-${id}`} />;
  const state = hasState && hasPlan && shown === 'both' ? stateOf(id, shown) : '';
  // Where the unit would take a line of its own beside the state, it goes to the name.
  const isBeside = name.includes(' ') || (state !== '' && hasUnitBeside(name));
  const secondLine = joined(unit === undefined || isBeside ? '' : shortUnit(unit), state, ' ');
  return (
    <th
      role="columnheader"
      scope="col"
      className={leftAligned.includes(id) ? `column-${id}` : `number column-${id}`}
      title={joined(explained, joined(unit === undefined ? '' : printUnit(unit), state, ', '), ', ')}
    >
      {isBeside ? headText(id) : name}
      {hiddenNames[id] !== undefined && <span className="visually-hidden"> {hiddenNames[id]}</span>}
      {secondLine !== '' && <span className="head-line"> {secondLine}</span>}
    </th>
  );
}

function joined(first: string, second: string, between: string): string {
  return [first, second].filter((part) => part !== '').join(between);
}

/** Three heads say "spread"; the eye sees of what. */
const hiddenNames: Partial<Record<ColumnId, string>> = {
  coefficientSpread: 'of the coefficient',
  spread: 'of the track power',
  savingSpread: 'of the saving',
};

/** The marks of the bars' scale. The numbers stand in the rows, so a screen reader passes the axis by. */
export function AxisLabels({ scale: { ticks, widthPx } }: { readonly scale: PowerScale }) {
  return (
    <svg className="bar-axis" width={widthPx} height={14} aria-hidden="true">
      {ticks.map(({ powerW, label, labelX }) => (
        <text key={powerW} x={labelX} y={11} textAnchor="middle">
          {label}
        </text>
      ))}
    </svg>
  );
}
