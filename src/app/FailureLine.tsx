import { useAppStore, type OpenFailure } from '../state/appStore';

/** Why a file did not open: one line that opens into one line per error. What was open stays open. */
export function FailureLine() {
  const failure = useAppStore((state) => state.openFailure);
  return (
    <div className="failure" role="alert">
      {failure !== null && <Failure failure={failure} />}
    </div>
  );
}

interface FailureProps {
  readonly failure: OpenFailure;
}

function Failure({ failure: { fileName, errors } }: FailureProps) {
  const count = errors.length === 1 ? '1 error' : `${errors.length} errors`;
  return (
    <div className="failure-line">
      <details>
        <summary>
          <bdi className="failure-name">{fileName}</bdi> did not open: {count}. What was open stays.
        </summary>
        <ul className="failure-list">
          {errors.map(({ path, message }) => (
            <li key={`${path} ${message}`}>
              {path === '' ? '' : <b>{path}: </b>}
              {message}
            </li>
          ))}
        </ul>
      </details>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          useAppStore.getState().dismissFailure();
        }}
      >
        Dismiss
      </button>
    </div>
  );
}
