import { useState } from 'react';
import { surveyCsv, surveyTemplateCsv } from '../../project/tables/surveyCsv';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';
import { downloadText } from '../../state/storage/downloadText';
import { fileNameFor } from '../../state/storage/fileNameFor';
import { OneOfWords, type Option } from '../../ui/OneOf';
import { BringInTable } from './BringInTable';
import { SurveySheet, type Paper } from './SurveySheet';
import './survey.css';

interface SurveyPlaceProps {
  /** A fitting was made: the ledger shows it. */
  readonly onShowFitting?: (fittingId: string) => void;
}

/** Where the job begins: a sheet for the dock, its CSV, and the way back with what was measured. */
export function SurveyPlace({ onShowFitting }: SurveyPlaceProps) {
  const project = useAppStore((state) => state.project);
  if (project === null) return <p className="survey muted">Opening the project.</p>;
  return (
    <div className="survey">
      <div className="survey-screen">
        <h2>Survey</h2>
        <p className="survey-words">
          Go along the boat from bow to stern to masthead and list what stands in the wind: size, length,
          place and count, on paper or in a spreadsheet. Estimate what you cannot reach, and say so.
        </p>
      </div>
      <SheetPart project={project} />
      <BringInTable project={project} onShowFitting={onShowFitting} />
    </div>
  );
}

const papers: readonly Option<Paper>[] = [
  { id: 'a4', label: 'A4' },
  { id: 'letter', label: 'Letter' },
];

function SheetPart({ project }: { readonly project: Project }) {
  const [paper, setPaper] = useState<Paper>('a4');
  const [isShown, setIsShown] = useState(false);
  return (
    <section className="survey-part" aria-labelledby="survey-sheet-head">
      <div className="survey-screen">
        <h3 id="survey-sheet-head">The sheet and its file</h3>
        <div className="survey-actions">
          <button
            type="button"
            className="plain-action"
            onClick={() => {
              window.print();
            }}
          >
            Print the sheet
          </button>
          <OneOfWords label="Paper" options={papers} chosenId={paper} onChoose={setPaper} />
          <button
            type="button"
            className="plain-action"
            aria-expanded={isShown}
            onClick={() => {
              setIsShown(!isShown);
            }}
          >
            {isShown ? 'Hide the sheet' : 'Show the sheet'}
          </button>
          <CsvAction words="Save the CSV template" ending=", survey.csv" text={surveyTemplateCsv} />
          <CsvAction words="Save the fittings as a survey" ending=", fittings.csv" text={surveyCsv} />
        </div>
        <p className="fine">
          The template has a line for each usual item; lines without a size, a place or a count are passed
          over when it comes back.
        </p>
      </div>
      <SurveySheet project={project} paper={paper} isShown={isShown} />
    </section>
  );
}

interface CsvActionProps {
  readonly words: string;
  readonly ending: string;
  readonly text: (project: Project) => string;
}

function CsvAction({ words, ending, text }: CsvActionProps) {
  return (
    <button
      type="button"
      className="plain-action"
      onClick={() => {
        const { project } = useAppStore.getState();
        if (project !== null)
          downloadText(fileNameFor(project, ending), text(project), 'text/csv;charset=utf-8');
      }}
    >
      {words}
    </button>
  );
}
