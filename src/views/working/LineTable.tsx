import { unitSign } from '../../units/printIn';
import { displayUnit, formulaPieces, type FormulaPiece } from './formula';
import { FormulaText } from './FormulaText';
import type { LineGroup } from './memberLines';
import type { NumberedSource } from './sourceNumbers';
import type { LineCell, WorkingLine } from './workingLine';

interface LineTableProps {
  readonly caption: string;
  readonly groups: readonly LineGroup[];
  readonly sideNames: readonly string[];
  readonly sources: readonly NumberedSource[];
}

/** Lines of the working: name and formula on the left, a number for each side on the right. */
export function LineTable({ caption, groups, sideNames, sources }: LineTableProps) {
  return (
    <table className="working-lines">
      <caption className="visually-hidden">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="visually-hidden">quantity</span>
          </th>
          {sideNames.map((name) => (
            <th key={name} scope="col" className="working-value">
              {name}
            </th>
          ))}
          <th scope="col">
            <span className="visually-hidden">unit</span>
          </th>
        </tr>
      </thead>
      {groups.map((group) => (
        <tbody key={group.title}>
          <tr>
            <th scope="rowgroup" colSpan={sideNames.length + 2} className="working-group">
              {group.title}
            </th>
          </tr>
          {group.lines.map((line) => (
            <Line key={line.key} line={line} sideNames={sideNames} sources={sources} />
          ))}
        </tbody>
      ))}
    </table>
  );
}

interface LineProps {
  readonly line: WorkingLine;
  readonly sideNames: readonly string[];
  readonly sources: readonly NumberedSource[];
}

function Line({ line, sideNames, sources }: LineProps) {
  const { quantity, cells } = line;
  const source = sources.find(({ id }) => id === quantity.source);
  const { equation } = quantity;
  return (
    <tr>
      <th
        scope="row"
        className={equation === undefined ? 'working-name' : 'working-name working-name-with-formula'}
      >
        <span className="working-label">
          {quantity.label}
          {equation === undefined && (
            <>
              , <FormulaText pieces={formulaPieces(quantity.symbol)} />
              <SourceMark source={source} />
            </>
          )}
        </span>
        {equation !== undefined && (
          <span className="working-formula">
            {equation !== quantity.symbol && (
              <>
                <FormulaText pieces={formulaPieces(quantity.symbol)} />
                {' = '}
              </>
            )}
            <FormulaText pieces={formulaPieces(equation)} />
            <Numbers cells={cells} sideNames={sideNames} />
            <SourceMark source={source} />
          </span>
        )}
        <Notes cells={cells} sideNames={sideNames} />
      </th>
      {cells.map((cell, i) => (
        <Value key={sideNames[i]} cell={cell} first={i === 0 ? null : (cells[0] ?? null)} />
      ))}
      <td className="working-unit">{unitSign(displayUnit(quantity.unit))}</td>
    </tr>
  );
}

/** Number of the source in the list at the foot, and how sure it is. */
function SourceMark({ source }: { readonly source: NumberedSource | undefined }) {
  if (source === undefined) return null;
  return (
    <span className="working-source">
      {' '}
      [{source.number}, {source.confidence}]
    </span>
  );
}

/** A value and its range; what a plan leaves alone is an equals sign. */
function Value({ cell, first }: { readonly cell: LineCell | null; readonly first: LineCell | null }) {
  if (cell === null) return <td className="working-value muted">–</td>;
  const isSame = first !== null && first.text === cell.text && first.spread === cell.spread;
  if (isSame) {
    return (
      <td className="working-value muted">
        <span aria-hidden="true">=</span>
        <span className="visually-hidden">{cell.text}, the same</span>
      </td>
    );
  }
  return (
    <td className={first === null ? 'working-value' : 'working-value working-changed'}>
      {cell.text}
      {cell.spread !== null && <span className="working-spread">{cell.spread}</span>}
    </td>
  );
}

interface CellsProps {
  readonly cells: readonly (LineCell | null)[];
  readonly sideNames: readonly string[];
}

/** The formula with its numbers: once where both sides have the same, else a line for each. */
function Numbers({ cells, sideNames }: CellsProps) {
  const sides = presentSides(cells, sideNames).flatMap(({ name, cell }) =>
    cell.numbers === null ? [] : [{ name, numbers: cell.numbers }],
  );
  const isOne = sides.every(({ numbers }) => textOf(numbers) === textOf(sides[0]?.numbers ?? []));
  return (isOne ? sides.slice(0, 1) : sides).map(({ name, numbers }) => (
    <span key={name} className={isOne ? 'working-numbers' : 'working-numbers working-own-line'}>
      {isOne ? ' = ' : `${name} = `}
      <FormulaText pieces={numbers} />
    </span>
  ));
}

function textOf(pieces: readonly FormulaPiece[]): string {
  return pieces.map(({ text, sup = '' }) => text + sup).join('');
}

function Notes({ cells, sideNames }: CellsProps) {
  const sides = presentSides(cells, sideNames).map(({ name, cell }) => ({ name, note: cell.note ?? '' }));
  const isOne = sides.every(({ note }) => note === sides[0]?.note);
  return (isOne ? sides.slice(0, 1) : sides).map(({ name, note }) =>
    note === '' ? null : (
      <span key={name} className="working-note">
        {isOne ? note : `${name}: ${note}`}
      </span>
    ),
  );
}

/** The sides that have the number at all: a removed fitting has none. */
function presentSides(
  cells: readonly (LineCell | null)[],
  sideNames: readonly string[],
): { readonly name: string; readonly cell: LineCell }[] {
  return cells.flatMap((cell, i) => (cell === null ? [] : [{ name: sideNames[i] ?? '', cell }]));
}
