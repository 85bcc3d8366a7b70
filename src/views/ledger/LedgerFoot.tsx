import { memo, useState } from 'react';
import { ledgerBarGeometry } from '../../charts/ledgerBarGeometry';
import { trackPowerScale } from '../../charts/ledgerBarScale';
import type { Project } from '../../project/file/schema';
import type { ProjectLedger } from '../../project/ledger/ledgerTypes';
import { OutsideMark } from '../../ui/OutsideMark';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { flagKey } from './flagLetters';
import { footnotesOf, type Footnote } from './footnotes';
import { LedgerColumns } from './LedgerColumns';
import { AxisLabels } from './LedgerHead';
import type { RowSetting } from './LedgerRowView';
import { LedgerTotals } from './LedgerTotals';
import { SideCells } from './SideCells';

interface LedgerFootProps {
  readonly project: Project;
  readonly ledger: ProjectLedger;
  readonly setting: RowSetting;
}

/** What never scrolls away: cautions, key, double rule and total. */
export const LedgerFoot = memo(function LedgerFoot({ project, ledger, setting }: LedgerFootProps) {
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
          <i>number in italics</i> rank unsure
        </span>
        <span className="bar-key">Bars: filled after, hatched saved, crossed added; line, spread.</span>
      </p>
      <TotalTable ledger={ledger} setting={setting} />
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

/** The total on a scale of its own, in the columns of the rows above it. */
function TotalTable({ ledger, setting }: { readonly ledger: ProjectLedger; readonly setting: RowSetting }) {
  const { forces, rows } = ledger;
  const count = rows.filter(({ excludedReason }) => excludedReason === null).length;
  const scale = trackPowerScale([forces], setting.scale.widthPx);
  return (
    <table className="ledger-table total-table">
      <caption className="visually-hidden">Total of the forces that act, columns as in the ledger</caption>
      <LedgerColumns barWidthPx={scale.widthPx} hasFullPrice={setting.hasFullPrice} widths={setting.widths} />
      <tbody>
        <tr className="total-row">
          <td className="column-number" />
          <th scope="row" className="column-name">
            {count === 1 ? 'The one fitting' : `All ${count} fittings`}
          </th>
          <td className="column-flags" />
          <td className="column-coefficient" />
          <td className="column-spread" />
          <td className="column-regime" />
          <SideCells
            side={forces}
            shown={setting.shown}
            places={setting.places}
            hasFullPrice={setting.hasFullPrice}
            bar={ledgerBarGeometry(forces, scale, { shown: setting.shown, heightPx: 20 })}
            axis={<AxisLabels scale={scale} />}
            isChanged={rows.some(({ isChanged }) => isChanged)}
          />
        </tr>
      </tbody>
    </table>
  );
}
