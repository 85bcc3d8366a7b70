import { isOutsideValidity, trackPowerScale, type PowerScale } from '../../charts/ledgerBarScale';
import type { ProjectBoat } from '../../project/file/schema';
import type { LedgerRow, ProjectLedger } from '../../project/ledger/ledgerTypes';
import type { Shown } from '../../state/appStore';
import type { Preferences } from '../../state/preferences';
import { boughtText } from './cellText';
import { columnWidths } from './columnWidths';
import { flagLetters } from './flagLetters';
import { shownColumns, type ColumnId } from './ledgerColumns';
import { ledgerPlaces, type LedgerPlaces } from './ledgerPlaces';

/** What all rows share. */
export interface RowSetting {
  readonly boat: ProjectBoat;
  readonly shown: Shown;
  /** True when a plan is tried, so that before and after may differ. */
  readonly hasPlan: boolean;
  readonly columns: readonly ColumnId[];
  readonly widthsPx: readonly number[];
  readonly flagsWidthPx: number;
  /** Below this the table does not shrink and scrolls sideways. */
  readonly leastWidthPx: number;
  readonly places: LedgerPlaces;
  readonly scale: PowerScale;
  readonly rowHeightPx: number;
}

export interface SettingQuestion {
  readonly boat: ProjectBoat;
  readonly ledger: ProjectLedger;
  readonly shown: Shown;
  readonly preferences: Preferences;
  readonly isPhone: boolean;
  /** True on a phone too. */
  readonly isNarrow: boolean;
  readonly barWidthPx: number;
}

const numberWidthPx = 24;
const leastNameWidthPx = { desk: 176, phone: 128 };

/** A phone's figures are set in the size of a title. */
const phoneTypeScale = 15 / 13;

let last: { readonly key: string; readonly setting: RowSetting } | null = null;

/** What all rows share; the same object while nothing in it changes, so that an edit of one row draws one row. */
export function rowSetting(question: SettingQuestion): RowSetting {
  const setting = newSetting(question);
  const { boat, scale, ...plain } = setting;
  // The marks too: two units of power can differ in nothing else.
  const key = JSON.stringify([plain, scale.widthPx, scale.ticks, scale.xOf(0), scale.xOf(1)]);
  if (last?.key === key && last.setting.boat === boat) return last.setting;
  last = { key, setting };
  return setting;
}

function newSetting({
  boat,
  ledger,
  shown,
  preferences,
  isPhone,
  isNarrow,
  barWidthPx,
}: SettingQuestion): RowSetting {
  const { rows, plan, against } = ledger;
  const places = ledgerPlaces(rows);
  const columns = shownColumns({
    extras: preferences.columns,
    hasFullPrice: ledger.hasFullPrice,
    hasBought: rows.some(({ saving }) => boughtText(saving, places) !== ''),
    isNarrow,
    shown,
  });
  const widthsPx = columnWidths(columns, ledger, places, barWidthPx, shown, isPhone ? phoneTypeScale : 1);
  const flagsWidthPx = isPhone ? 0 : flagsWidth(rows);
  const namePx = isPhone ? leastNameWidthPx.phone : leastNameWidthPx.desk + numberWidthPx;
  return {
    boat,
    shown,
    hasPlan: plan !== null || against !== null,
    columns,
    widthsPx,
    flagsWidthPx,
    leastWidthPx: widthsPx.reduce((sum, width) => sum + width, namePx + flagsWidthPx),
    places,
    scale: trackPowerScale(rows, barWidthPx),
    rowHeightPx: rowHeight(isPhone, preferences.isCompact),
  };
}

/**
 * A row is a target for the finger or the mouse, and rows touch: 24 px is the least that WCAG 2.2 (2.5.8) allows, since
 * its exception for spacing does not hold where targets lie side by side.
 */
function rowHeight(isPhone: boolean, isCompact: boolean): number {
  if (isPhone) return isCompact ? 34 : 44;
  return isCompact ? 24 : 28;
}

const letterPx = 7.5;
const diamondPx = 12;
const betweenPx = 8;

function flagsWidth(rows: readonly LedgerRow[]): number {
  const widths = rows.map(
    ({ fitting, notices }) =>
      letterPx * flagLetters(fitting.flags).length + (isOutsideValidity(notices) ? diamondPx : 0),
  );
  return Math.ceil(betweenPx + Math.max(8, ...widths));
}
