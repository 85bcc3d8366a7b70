import { KeepAction, KeepLine } from '../keep/KeepLine';
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
    <KeepLine
      isQuiet
      words={
        isRefused
          ? 'A new version of Windtoll is ready. This browser has not saved your work: save it to a file before you reload.'
          : 'A new version of Windtoll is ready. Your work is saved in this browser; reload to use it.'
      }
    >
      {isRefused ? (
        <>
          <KeepAction words="Save to a file" onAct={saveToFile} />
          <KeepAction
            words="Reload anyway"
            onAct={() => {
              callWaiting(registration, reload);
            }}
          />
        </>
      ) : (
        <KeepAction words="Reload into it" onAct={() => void reloadInto(registration, keeper, reload)} />
      )}
      <KeepAction
        words="Later"
        onAct={() => {
          dismissFinding(finding);
        }}
      />
    </KeepLine>
  );
}
