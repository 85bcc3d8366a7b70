import type { SurveyPlace } from '../views/survey/SurveyPlace';
import { QuickAdd } from '../views/quickAdd/QuickAdd';
import type { ComponentProps } from 'react';
import { LazyPart, type Loader } from './LazyPart';
import type { PlaceProps } from './places';

const loadSurvey: Loader<ComponentProps<typeof SurveyPlace>> = async () =>
  (await import('../views/survey/SurveyPlace')).SurveyPlace;

/** On a dock the quick entry must be there at once; sheet and tables, which need a desk, come after it. */
export function SurveyPage({ onShowFitting }: PlaceProps) {
  return (
    <>
      <QuickAdd />
      <LazyPart load={loadSurvey} props={{ onShowFitting }} name="The survey's sheet and tables" />
    </>
  );
}
