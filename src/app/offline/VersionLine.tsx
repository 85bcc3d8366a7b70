import { dismissFinding, useKeeping, type Finding } from '../keep/keeping';
import { saveToFile } from '../keep/saveToFile';
import { useOffline } from './offline';
import { callWaiting, isUnsaved, reloadInto } from './reloadInto';

function reload(): void {
  window.location.reload();
}

/** That a new version waits. It is offered and never forced: whoever is at work goes on with the one they have. */
export function VersionLine({ finding }: { readonly finding: Finding }) {
  const keeper = useKeeping((state) => state.keeper);
  const isRefused = useKeeping((state) => isUnsaved(state.keeper, state.status));
  const registration = useOffline((state) => state.registration);
  return (
    <div className="keep-line keep-line-quiet">
      <p>
        {isRefused
          ? 'A new version of Windtoll is ready. This browser has not saved your work: save it to a file before you reload.'
          : 'A new version of Windtoll is ready. Your work is saved in this browser; reload to use it.'}
      </p>
      {isRefused ? (
        <>
          <Action words="Save to a file" onAct={saveToFile} />
          <Action
            words="Reload anyway"
            onAct={() => {
              callWaiting(registration, reload);
            }}
          />
        </>
      ) : (
        <Action words="Reload into it" onAct={() => void reloadInto(registration, keeper, reload)} />
      )}
      <Action
        words="Later"
        onAct={() => {
          dismissFinding(finding);
        }}
      />
    </div>
  );
}

function Action({ words, onAct }: { readonly words: string; readonly onAct: () => void }) {
  return (
    <button type="button" className="plain-action" onClick={onAct}>
      {words}
    </button>
  );
}
