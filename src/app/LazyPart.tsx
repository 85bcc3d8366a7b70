import { useEffect, useState, type ComponentType } from 'react';

/** Fetches a part of the page that the first paint does without. */
export type Loader<Props> = () => Promise<ComponentType<Props>>;

interface LazyPartProps<Props extends object> {
  readonly load: Loader<Props>;
  readonly props: Props;
  /** Names the part where it does not load, as in "The plan did not load." */
  readonly name: string;
}

/** Parts that are there: a pane that was open before opens at once. */
const loaded = new Map<unknown, unknown>();

/** Fetches a part before it is asked for. One that does not come is said where it is needed. */
export function preload<Props>(load: Loader<Props>): void {
  load().then(
    (part) => {
      loaded.set(load, part);
    },
    () => undefined,
  );
}

/** A part that is fetched when it is first needed; one that does not come says so and can be asked for again. */
export function LazyPart<Props extends object>({ load, props, name }: LazyPartProps<Props>) {
  const [attempt, setAttempt] = useState(0);
  const [state, setState] = useState<'waiting' | 'failed'>('waiting');
  const [, drawAnew] = useState(0);
  useEffect(() => {
    if (loaded.has(load)) return;
    let isWanted = true;
    load()
      .then((part) => {
        loaded.set(load, part);
        if (isWanted) drawAnew((count) => count + 1);
      })
      .catch(() => {
        if (isWanted) setState('failed');
      });
    return () => {
      isWanted = false;
    };
  }, [load, attempt]);

  const Part = loaded.get(load) as ComponentType<Props> | undefined;
  if (Part !== undefined) return <Part {...props} />;
  if (state === 'waiting') return null;
  return (
    <div className="part-failed" role="alert">
      <p>
        {name} did not load. Your work is untouched; if it fails again, save to a file and reload the page.
      </p>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          setState('waiting');
          setAttempt(attempt + 1);
        }}
      >
        Try again
      </button>
    </div>
  );
}
