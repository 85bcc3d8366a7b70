import { useAppStore } from '../state/appStore';
import { OneOfWords } from '../ui/OneOf';
import { LazyPart } from './LazyPart';
import { sidePanes } from './lazyPanes';

const noProps = {};

/** The pane beside the ledger: the working of the selected row, or a place where something is changed. */
export function SidePaneView() {
  const sidePane = useAppStore((state) => state.sidePane);
  const pane = sidePanes.find(({ id }) => id === sidePane);
  if (pane === undefined) return null;
  const isWorking = pane.id === 'working';
  return (
    <section
      className="working-place"
      aria-label={isWorking ? 'Working of the selected row' : pane.label}
      tabIndex={0}
    >
      <div className="side-words">
        <OneOfWords
          label="Beside the ledger"
          options={sidePanes}
          chosenId={pane.id}
          onChoose={(id) => {
            useAppStore.getState().showPane(id);
          }}
        />
      </div>
      <LazyPart key={pane.id} load={pane.load} props={noProps} name={pane.label} />
    </section>
  );
}
