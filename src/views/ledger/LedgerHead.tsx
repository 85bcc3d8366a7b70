import type { PowerScale } from '../../charts/ledgerBarScale';

interface LedgerHeadProps {
  readonly scale: PowerScale;
  readonly hasFullPrice: boolean;
}

/** Heads in lower case, the unit once under each; over the bars stands their scale. */
export function LedgerHead({ scale, hasFullPrice }: LedgerHeadProps) {
  return (
    <thead>
      <tr>
        <th scope="col" className="column-number">
          <span className="visually-hidden">number</span>
        </th>
        <th scope="col" className="column-name">
          fitting and size
        </th>
        <th scope="col" className="column-flags">
          <span className="visually-hidden">flags</span>
        </th>
        <th scope="col" className="column-coefficient">
          <span className="visually-hidden">coefficient</span>
          <span className="over-columns" aria-hidden="true">
            coefficient, spread
          </span>
        </th>
        <th scope="col" className="column-spread">
          <span className="visually-hidden">spread of the coefficient</span>
        </th>
        <th scope="col" className="column-regime">
          regime
        </th>
        <UnitHead className="column-drag" name="drag" unit="N" explained="force against the track" />
        <UnitHead className="column-air" name="air" unit="W" explained="air power" />
        <UnitHead className="column-before" name="before" unit="W" explained="track power" />
        <UnitHead className="column-after" name="after" unit="W" explained="track power" />
        {hasFullPrice && (
          <UnitHead
            className="column-price"
            name="full"
            unit="price W"
            explained="full price: track power with what side force and heel cost"
          />
        )}
        <th scope="col" className="column-bar">
          <span className="bar-title">track power</span>
          <AxisLabels scale={scale} />
        </th>
        <UnitHead className="column-saving" name="saving" unit="W" explained="saving in track power" />
      </tr>
    </thead>
  );
}

interface UnitHeadProps {
  readonly className: string;
  readonly name: string;
  readonly unit: string;
  readonly explained: string;
}

function UnitHead({ className, name, unit, explained }: UnitHeadProps) {
  return (
    <th scope="col" className={`number ${className}`} title={`${explained}, ${unit}`}>
      {name}
      <span className="head-unit">{unit}</span>
    </th>
  );
}

/** A mark closer to the right end than this, px, has its label to the left of it, or it would be cut. */
const endRoomPx = 16;

/** The marks of the bars' scale. The numbers stand in the rows, so a screen reader passes the axis by. */
export function AxisLabels({ scale: { ticks, widthPx } }: { readonly scale: PowerScale }) {
  return (
    <svg className="bar-axis" width={widthPx} height={14} aria-hidden="true">
      {ticks.map(({ x, label }) => (
        <text key={x} x={x} y={11} textAnchor={x > widthPx - endRoomPx ? 'end' : 'middle'}>
          {label}
        </text>
      ))}
    </svg>
  );
}
