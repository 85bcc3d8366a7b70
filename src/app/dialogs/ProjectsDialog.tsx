import { useEffect, useState } from 'react';
import { dayAndTimeText } from '../../state/storage/clock';
import { downloadText } from '../../state/storage/downloadText';
import type { Broken, Header } from '../../state/storage/records';
import type { ShelfListing } from '../../state/storage/shelfTypes';
import { openLoaded, type Keeper } from '../keep/keeper';
import { openDemo, useKeeping } from '../keep/keeping';
import { Dialog } from './Dialog';
import { useOffline } from '../offline/offline';
import { closeDialog, openDialog } from './shell';

/** The projects of this browser: open, duplicate, remove; and what did not open, to be downloaded. */
export function ProjectsDialog() {
  const keeper = useKeeping((state) => state.keeper);
  return (
    <Dialog title="Projects in this browser" onClose={closeDialog}>
      {keeper === null ? (
        <p>The browser’s storage has not answered yet.</p>
      ) : (
        <StoredProjects keeper={keeper} />
      )}
      <div className="dialog-actions">
        <Action
          words="New project"
          onAct={() => {
            openDialog('new');
          }}
        />
        <Action
          words="Open the demo"
          onAct={() => {
            closeDialog();
            void openDemo();
          }}
        />
      </div>
      <OfflineLine />
    </Dialog>
  );
}

/** Said only once it is true: the worker has stored every file. */
function OfflineLine() {
  const isReady = useOffline((state) => state.isReady);
  return (
    <p className="fine offline-line" role="status">
      {isReady && 'Works without a network: all parts of Windtoll are stored in this browser.'}
    </p>
  );
}

/** The listing, and a way to ask for it anew. What is pending is written first, so that the list is the truth. */
function useListing({ autosaver, shelf }: Keeper) {
  const [listing, setListing] = useState<ShelfListing | null>(null);
  const [asked, setAsked] = useState(0);
  useEffect(() => {
    let isWanted = true;
    void autosaver
      .flush()
      .then(() => shelf.list())
      .then((answer) => {
        if (isWanted) setListing(answer);
      });
    return () => {
      isWanted = false;
    };
  }, [autosaver, shelf, asked]);
  const renew = (): void => {
    setAsked((count) => count + 1);
  };
  return { listing, renew };
}

function StoredProjects({ keeper }: { readonly keeper: Keeper }) {
  const { listing, renew } = useListing(keeper);
  if (listing === null) return <p className="muted">Looking.</p>;
  if (listing.kind === 'failed') return <p role="alert">The list cannot be read: {listing.why}.</p>;
  const { projects, broken } = listing;
  return (
    <>
      {!keeper.shelf.isKept && (
        <p role="alert">This browser keeps nothing: all of this goes with the page.</p>
      )}
      {projects.length === 0 && (
        <p>
          None yet. The demo becomes a project of yours at its first change; a file does when you open it.
        </p>
      )}
      <ul className="stored-projects">
        {projects.map((header) => (
          <StoredItem key={header.id} header={header} keeper={keeper} onChanged={renew} />
        ))}
      </ul>
      {broken.length > 0 && <h3>Set aside because they did not open</h3>}
      <ul className="stored-projects">
        {broken.map((each) => (
          <BrokenItem key={each.key} broken={each} keeper={keeper} onChanged={renew} />
        ))}
      </ul>
    </>
  );
}

interface ItemProps {
  readonly keeper: Keeper;
  readonly onChanged: () => void;
}

function StoredItem({ header, keeper, onChanged }: ItemProps & { readonly header: Header }) {
  const [isAsking, setIsAsking] = useState(false);
  const [problem, setProblem] = useState('');
  const { id, name, savedAt } = header;
  const isOpen = keeper.autosaver.openId() === id;

  const open = async (): Promise<void> => {
    if (isOpen || openLoaded(await keeper.shelf.load(id))) closeDialog();
    else onChanged();
  };
  const duplicate = async (): Promise<void> => {
    const copy = await keeper.shelf.duplicate(id);
    setProblem(copy.kind === 'failed' ? `Not duplicated: ${copy.why}.` : '');
    onChanged();
  };
  const remove = async (): Promise<void> => {
    setIsAsking(false);
    const removed = await keeper.shelf.remove(id);
    setProblem(removed.kind === 'failed' ? `Not removed: ${removed.why}.` : '');
    if (isOpen && removed.kind === 'done') await openDemo();
    onChanged();
  };
  return (
    <li>
      <span className="stored-name">
        {name} {isOpen && <span className="muted">(open)</span>}
      </span>
      <span className="muted">{dayAndTimeText(new Date(savedAt))}</span>
      {isAsking ? (
        <>
          <span>Remove it for good?</span>
          <Action words="Remove" of={name} onAct={() => void remove()} />
          <Action
            words="Keep"
            of={name}
            onAct={() => {
              setIsAsking(false);
            }}
          />
        </>
      ) : (
        <>
          <Action words="Open" of={name} onAct={() => void open()} />
          <Action words="Duplicate" of={name} onAct={() => void duplicate()} />
          <Action
            words="Remove…"
            of={name}
            onAct={() => {
              setIsAsking(true);
            }}
          />
        </>
      )}
      {problem !== '' && <span role="alert">{problem}</span>}
    </li>
  );
}

function BrokenItem({ broken, keeper, onChanged }: ItemProps & { readonly broken: Broken }) {
  const name = broken.name === '' ? 'without a name' : broken.name;
  return (
    <li>
      <span className="stored-name">
        {name} <span className="muted">({broken.why})</span>
      </span>
      <span className="muted">{dayAndTimeText(new Date(broken.setAsideAt))}</span>
      <Action
        words="Download"
        of={name}
        onAct={() => {
          downloadText('set-aside.json', broken.content);
        }}
      />
      <Action
        words="Remove"
        of={name}
        onAct={() => void keeper.shelf.removeBroken(broken.key).then(onChanged)}
      />
    </li>
  );
}

interface ActionProps {
  readonly words: string;
  /** The project that it is about, for those who listen. */
  readonly of?: string;
  readonly onAct: () => void;
}

function Action({ words, of, onAct }: ActionProps) {
  return (
    <button type="button" className="plain-action" onClick={onAct}>
      {words}
      {of !== undefined && <span className="visually-hidden"> {of}</span>}
    </button>
  );
}
