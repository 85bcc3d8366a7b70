import { useMemo } from 'react';
import { BoatOutline } from '../../charts/BoatOutline';
import { boatOutlineGeometry } from '../../charts/boatOutlineGeometry';
import type { Project } from '../../project/file/schema';
import { linesToFill, usualItems, wordForEntry } from '../../project/tables/surveyCsv';
import { surveyHead } from '../../project/tables/surveyColumns';
import './surveySheet.css';

export type Paper = 'a4' | 'letter';

interface SurveySheetProps {
  readonly project: Project;
  readonly paper: Paper;
  /** On the screen; on paper it always stands. */
  readonly isShown: boolean;
}

/** What is measured of an item, in the order of the tape. */
const columns = ['width', 'thickness', 'length', 'aboveDeck', 'aftOfStem'] as const;

/** So large, px, that it fits the width of either paper and leaves room for the words on the first page. */
const outlineRoom = { widthPx: 640, heightPx: 640 };

/** The sheet for the dock: the boat to be marked, then each zone with its usual items and blank lines. */
export function SurveySheet({ project, paper, isShown }: SurveySheetProps) {
  const { boat, zones } = project;
  const outline = useMemo(() => boatOutlineGeometry(boat, outlineRoom), [boat]);
  const items = useMemo(() => usualItems(zones), [zones]);
  return (
    <div
      className={`survey-sheet survey-${paper}${isShown ? ' survey-shown' : ''}`}
      role="group"
      aria-label="Sheet"
      tabIndex={0}
    >
      <h2>Survey of {boat.name}</h2>
      <p className="sheet-line">
        <span>Date</span>
        <span>By</span>
        <span>Photos from number</span>
      </p>
      <BoatOutline chart={outline} />
      <p className="fine">
        Mark where things stand. Tick what is there; write sizes as they are read and name the unit where it
        is another than the head’s. M or E: measured or estimated. Side: port, starboard, centreline or both;
        the count is of one side.
      </p>
      {items.map(({ zone, entries }) => (
        <table key={zone.id} className="sheet-table">
          <caption>{zone.name}</caption>
          <thead>
            <tr>
              <th scope="col">
                <span className="visually-hidden">There</span>
              </th>
              <th scope="col">{surveyHead('item')}</th>
              <th scope="col">{surveyHead('shape')}</th>
              {columns.map((key) => (
                <th key={key} scope="col">
                  {surveyHead(key)}
                </th>
              ))}
              <th scope="col">{surveyHead('side')}</th>
              <th scope="col">{surveyHead('count')}</th>
              <th scope="col">{surveyHead('photo')}</th>
              <th scope="col">M or E</th>
            </tr>
          </thead>
          <tbody>
            {entries.map((entry) => (
              <SheetLine key={entry.id} name={entry.name} shape={wordForEntry(entry, boat)} />
            ))}
            {Array.from({ length: linesToFill }, (_, i) => (
              <SheetLine key={i} name="" shape="" />
            ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}

const blanks = [...columns, 'side', 'count', 'photo', 'basis'];

function SheetLine({ name, shape }: { readonly name: string; readonly shape: string }) {
  return (
    <tr>
      <td>
        <span className="sheet-tick" />
      </td>
      <td>{name}</td>
      <td>{shape}</td>
      {blanks.map((key) => (
        <td key={key} />
      ))}
    </tr>
  );
}
