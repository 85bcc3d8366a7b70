import { useAppStore } from '../state/appStore';
import { wantField } from '../state/typedTexts';
import { MarginPane } from '../views/margin/MarginPane';
import { LazyPart } from './LazyPart';
import { goTo, keepWords, usePlace } from './place';
import { places, type PlaceProps } from './places';
import { bringUp } from './swap';

/** A place other than the ledger, with the margin beside it where there is room. */
export function PlaceView() {
  const id = usePlace(({ place }) => place);
  const words = usePlace((state) => state.words[id] ?? '');
  const hasProject = useAppStore((state) => state.project !== null);
  const place = places.find((each) => each.id === id);
  if (place === undefined || place.load === null) return null;
  const props: PlaceProps = {
    words,
    onWords: (next) => {
      keepWords(id, next);
    },
    onShowFitting: showFitting,
    onShowItem: showItem,
  };
  return (
    <main className="sheet place-sheet">
      <section className="margin-place" aria-label="Condition and plan">
        {hasProject && <MarginPane />}
      </section>
      <section className="other-place" aria-label={place.label} tabIndex={-1}>
        <LazyPart key={id} load={place.load} props={props} name={place.label} />
      </section>
    </main>
  );
}

function showFitting(fittingId: string): void {
  goTo('ledger');
  useAppStore.getState().select(fittingId);
}

/** The plan's pane with the item open, ready for another name. */
function showItem(planId: string, itemId: string): void {
  goTo('ledger');
  const store = useAppStore.getState();
  store.choosePlan(planId);
  store.showPane('plan');
  bringUp('side');
  wantField(`plan/${planId}/${itemId}.name`);
}
