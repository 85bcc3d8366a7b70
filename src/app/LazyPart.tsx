import {
  Fragment,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
  type ComponentType,
  type ReactNode,
} from 'react';

/** Fetches a part of the page that the first paint does without. */
export type Loader<Props> = () => Promise<ComponentType<Props>>;

interface LazyPartProps<Props extends object> {
  readonly load: Loader<Props>;
  readonly props: Props;
  /** Names the part where it does not load, as in "The plan did not load." */
  readonly name: string;
  /** What stands around the words of a part that did not load; without it they stand where the part would. */
  readonly frame?: ComponentType<{ readonly children: ReactNode }>;
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

/** The bundler asks for a style sheet once and no more: here those that did not come are asked for again. */
async function withStyles<Part>(load: () => Promise<Part>): Promise<Part> {
  const links = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')];
  await Promise.all(links.filter(isMissing).map(askedAgain));
  return load();
}

/** A sheet that did not come is null, empty or closed to scripts, as the browser likes; none of ours is empty. */
function isMissing({ sheet }: HTMLLinkElement): boolean {
  try {
    return sheet === null || sheet.cssRules.length === 0;
  } catch {
    return true;
  }
}

function askedAgain(link: HTMLLinkElement): Promise<void> {
  return new Promise((resolve, reject) => {
    const again = document.createElement('link');
    again.rel = 'stylesheet';
    again.href = link.href;
    again.onload = () => {
      link.remove();
      resolve();
    };
    again.onerror = () => {
      again.remove();
      reject(new Error(`${link.href} did not load`));
    };
    link.after(again);
  });
}

/** A part that is fetched when it is first needed; one that does not come says so and can be asked for again. */
export function LazyPart<Props extends object>({
  load,
  props,
  name,
  frame: Frame = Fragment,
}: LazyPartProps<Props>) {
  const [attempt, setAttempt] = useState(0);
  const [failedAttempt, setFailedAttempt] = useState(-1);
  const [, drawAnew] = useState(0);
  useEffect(() => {
    if (loaded.has(load)) return;
    let isWanted = true;
    (attempt === 0 ? load() : withStyles(load))
      .then((part) => {
        loaded.set(load, part);
        if (isWanted) drawAnew((count) => count + 1);
      })
      .catch(() => {
        if (isWanted) setFailedAttempt(attempt);
      });
    return () => {
      isWanted = false;
    };
  }, [load, attempt]);

  const Part = loaded.get(load) as ComponentType<Props> | undefined;
  if (Part !== undefined) return <Part {...props} />;
  if (failedAttempt === -1) return null;
  return (
    <Frame>
      <NotLoaded
        name={name}
        isTrying={failedAttempt !== attempt}
        onTryAgain={() => {
          setAttempt(failedAttempt + 1);
        }}
      />
    </Frame>
  );
}

interface NotLoadedProps {
  readonly name: string;
  readonly isTrying: boolean;
  readonly onTryAgain: () => void;
}

/** Stays while the part is asked for again, so that the focus has a place to be. */
function NotLoaded({ name, isTrying, onTryAgain }: NotLoadedProps) {
  const ref = useRef<HTMLDivElement>(null);
  // Before the button goes, and the focus with it.
  useLayoutEffect(() => {
    const box = ref.current;
    const around = box?.parentElement?.closest<HTMLElement>('[tabindex]');
    return () => {
      if (box?.contains(document.activeElement) === true) around?.focus();
    };
  }, []);
  return (
    <div ref={ref} className="part-failed">
      <p role="alert">
        {isTrying
          ? `${name}: trying again.`
          : `${name} did not load: the connection is gone, or the page has been renewed since you opened it. Nothing of your work is lost. Try again when the connection is back; if it still fails, save to a file and reload the page.`}
      </p>
      <button
        type="button"
        className="plain-action"
        aria-disabled={isTrying}
        onClick={() => {
          if (!isTrying) onTryAgain();
        }}
      >
        Try again
      </button>
    </div>
  );
}
