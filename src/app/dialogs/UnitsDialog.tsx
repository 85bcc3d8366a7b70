import { flushSync } from 'react-dom';
import { prefer, usePreferences } from '../../state/preferences';
import { displayChoices, type DisplayKind, type DisplayUnits } from '../../units/displayUnits';
import { toSi } from '../../units/convert';
import { quantityIn, unitSign } from '../../units/printIn';
import type { Unit } from '../../units/unitTable';
import { Dialog } from './Dialog';
import { closeDialog } from './shell';
import './unitsDialog.css';

const legends: Readonly<Record<DisplayKind, string>> = {
  speed: 'Speed',
  length: 'Lengths and heights',
  size: 'Diameters and small sizes',
  force: 'Force',
  power: 'Power',
  moment: 'Moment',
};

const kinds = Object.keys(displayChoices) as readonly DisplayKind[];

/** The units that the page is read and typed in. They hold for every project in this browser. */
export function UnitsDialog() {
  const units = usePreferences((state) => state.units);
  return (
    <Dialog title="Units" onClose={closeDialog}>
      <p>What the page shows, and what a field takes a bare number for. Any other unit can still be typed.</p>
      {kinds.map((kind) => (
        <fieldset key={kind} className="unit-choice">
          <legend>{legends[kind]}</legend>
          {displayChoices[kind].map((unit) => (
            <label key={unit}>
              <input
                type="radio"
                name={`unit-${kind}`}
                value={unit}
                checked={units[kind] === unit}
                onChange={() => {
                  choose({ ...units, [kind]: unit });
                }}
              />
              {wordsOf(unit)}
            </label>
          ))}
        </fieldset>
      ))}
      <p className="fine">
        Kept by this browser, for all projects. Files, the terminal and the working keep SI, whatever is
        chosen; the working gives its answers in your units too. A height that names a convention, such as the
        wind at 10 m, keeps its name. Masses, areas, pressure, temperature and angles have one unit each.
      </p>
    </Dialog>
  );
}

/** Which horsepower it is, is said with its size. */
function wordsOf(unit: Unit): string {
  const isHorsepower = unit === 'hp' || unit === 'PS';
  return isHorsepower
    ? `${unitSign(unit)}, ${quantityIn(toSi(1, unit), 'W', { decimals: 3 })}`
    : unitSign(unit);
}

/** The ledger is drawn anew, but stays where it was read. */
function choose(units: DisplayUnits): void {
  const place = (): Element | null => document.querySelector('.ledger-scroll');
  const topPx = place()?.scrollTop ?? 0;
  flushSync(() => {
    prefer({ units });
  });
  if (topPx > 0) place()?.scrollTo(0, topPx);
}
