import { useState } from 'react';
import { memberQuantities, type MemberTrace, type MemberTraceKey } from '../../physics/fitting/memberTrace';
import { decimalsIn, unitSign, valueIn } from '../../units/printIn';
import { displayUnit, formulaPieces } from './formula';
import { FormulaText } from './FormulaText';
import { threeFigures } from './workingLine';

const columns = [
  'heightM',
  'reynolds',
  'coefficientBest',
  'forceTrackXN',
  'trackPowerW',
] as const satisfies readonly MemberTraceKey[];

/** A longer row is folded to its first and last members. */
const mostUnfolded = 6;
const keptAtEachEnd = 2;

interface MembersTableProps {
  readonly members: readonly MemberTrace[];
  readonly caption: string;
}

/** Each member of a row at its own place; all of them one click away. */
export function MembersTable({ members, caption }: MembersTableProps) {
  const [isOpen, setIsOpen] = useState(false);
  const isFolded = members.length > mostUnfolded && !isOpen;
  const numbered = members.map((member, i) => ({ number: i + 1, member }));
  const head = isFolded ? numbered.slice(0, keptAtEachEnd) : numbered;
  const tail = isFolded ? numbered.slice(-keptAtEachEnd) : [];
  const used = columns.filter((key) => members.some((member) => member[key] !== null));
  return (
    <table className="working-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">no.</th>
          {used.map((key) => (
            <th key={key} scope="col">
              <FormulaText pieces={formulaPieces(memberQuantities[key].symbol)} />{' '}
              {unitSign(displayUnit(memberQuantities[key].unit))}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {head.map(({ number, member }) => (
          <MemberRow key={number} number={number} member={member} columns={used} all={members} />
        ))}
        {isFolded && (
          <tr>
            <td colSpan={used.length + 1} className="working-more">
              <button
                type="button"
                className="plain-action"
                onClick={() => {
                  setIsOpen(true);
                }}
              >
                {valueIn(members.length - 2 * keptAtEachEnd, '1', { decimals: 0 })} more
              </button>
            </td>
          </tr>
        )}
        {tail.map(({ number, member }) => (
          <MemberRow key={number} number={number} member={member} columns={used} all={members} />
        ))}
      </tbody>
    </table>
  );
}

interface MemberRowProps {
  readonly number: number;
  readonly member: MemberTrace;
  readonly columns: readonly MemberTraceKey[];
  readonly all: readonly MemberTrace[];
}

function MemberRow({ number, member, columns: used, all }: MemberRowProps) {
  return (
    <tr>
      <th scope="row">{number}</th>
      {used.map((key) => (
        <td key={key}>{valueText(key, member, all)}</td>
      ))}
    </tr>
  );
}

/** One place for a column, so that the members add up to the eye. */
function valueText(key: MemberTraceKey, member: MemberTrace, all: readonly MemberTrace[]): string {
  const value = member[key];
  if (value === null) return '–';
  const unit = displayUnit(memberQuantities[key].unit);
  if (key === 'reynolds') return valueIn(threeFigures(value), unit);
  const decimals = decimalsIn(
    all.map((each) => each[key] ?? 0),
    unit,
  );
  return valueIn(value, unit, { decimals });
}
