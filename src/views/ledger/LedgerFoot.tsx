import { memo, useState, type RefObject } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { trackPowerScale } from '../../charts/ledgerBarScale';
import type { Project } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { OutsideMark } from '../../ui/OutsideMark';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { flagKey } from './flagLetters';
import { footnotesOf, type Footnote } from './footnotes';
import { ledgerCells } from './LedgerCells';
import { LedgerColumns } from './LedgerColumns';
import { AxisLabels } from './LedgerHead';
import { LedgerTotals } from './LedgerTotals';
import type { RowSetting } from './rowSetting';

interface LedgerFootProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly setting: RowSetting;
  /** The box of the total, which is kept under the rows when they are scrolled sideways. */
  readonly totalBox: RefObject<HTMLDivElement | null>;
}

/** What never scrolls away: cautions, key, double rule and total. */
export const LedgerFoot = memo(function LedgerFoot({ project, ledger, setting, totalBox }: LedgerFootProps) {
  return (
    <footer className="ledger-foot">
      <Footnotes footnotes={footnotesOf(ledger)} />
      <p className="flag-key fine">
        {flagKey.map(({ letter, words }) => (
          <span key={letter}>
            <i>{letter}</i> {words}
          </span>
        ))}
        <span>
          <u>number</u> rank safe
        </span>
        {setting.columns.includes('price') && <span>Order and rank: by track power.</span>}
        <span className="bar-key">Bars: filled after, hatched saved, crossed added; line, spread.</span>
      </p>
      <div className="total-scroll" ref={totalBox}>
        <TotalTable project={project} ledger={ledger} setting={setting} />
      </div>
      <LedgerTotals project={project} ledger={ledger} places={setting.places} shown={setting.shown} />
    </footer>
  );
});

function Footnotes({ footnotes }: { readonly footnotes: readonly Footnote[] }) {
  const [isOpen, setIsOpen] = useState(false);
  // What is read without opening anything.
  const standing = useMediaQuery('(max-width: 599px)') ? 1 : 2;
  const rest = footnotes.length - standing;
  if (footnotes.length === 0) return null;
  return (
    <div className={isOpen ? 'footnotes open' : 'footnotes'}>
      <ul>
        {footnotes.map((footnote, i) => (
          <li
            key={`${footnote.about} ${footnote.text}`}
            className={i < standing || isOpen ? undefined : 'folded-note'}
          >
            <FootnoteText {...footnote} />
          </li>
        ))}
      </ul>
      {rest > 0 && (
        <button
          type="button"
          className="plain-action more-notes"
          aria-expanded={isOpen}
          onClick={() => {
            setIsOpen(!isOpen);
          }}
        >
          {isOpen ? 'fewer' : `${rest} more`}
        </button>
      )}
    </div>
  );
}

function FootnoteText({ about, text, isOutside }: Footnote) {
  return (
    <span className={isOutside ? 'outside-note' : undefined}>
      {isOutside && <OutsideMark label="outside its valid range" />} {about !== '' && <b>{about}: </b>}
      {text}
    </span>
  );
}

/** The total on a scale of its own, from the same zero where it can be, in the columns of the rows above it. */
function TotalTable({ project, ledger, setting }: Omit<LedgerFootProps, 'totalBox'>) {
  const { forces, rows } = ledger;
  const { columns, shown, places, leastWidthPx } = setting;
  const count = rows.filter(({ excludedReason }) => excludedReason === null).length;
  const scale = trackPowerScale([forces], setting.scale.widthPx, setting.scale);
  return (
    <table role="table" className="ledger-table total-table" style={{ minWidth: leastWidthPx }}>
      <caption className="visually-hidden">Total of the forces that act, columns as in the ledger</caption>
      <LedgerColumns setting={setting} />
      <tbody role="rowgroup">
        <tr role="row" className="total-row">
          <td role="cell" className="column-number" />
          <th role="rowheader" scope="row" className="column-name">
            {count === 1 ? 'The one fitting' : `All ${count} fittings`}
          </th>
          <td role="cell" className="column-flags" />
          {ledgerCells({
            columns,
            side: forces,
            shown,
            places,
            fittings: project.fittings,
            bar: ledgerBarGeometry(forces, scale, { shown, heightPx: 20 }),
            axis: <AxisLabels scale={scale} />,
            isChanged: rows.some(({ isChanged }) => isChanged),
          })}
        </tr>
      </tbody>
    </table>
  );
}
