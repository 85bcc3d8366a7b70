import { useAppStore } from '../../state/appStore';
import { downloadText } from '../../state/storage/downloadText';
import type { SaveStatus } from '../../state/storage/saveStatus';
import type { ShelfLoadResult } from '../../state/storage/shelfTypes';
import { openLoaded } from './keeper';
import { dismissFinding, openDemo, useKeeping, type Finding } from './keeping';
import { saveToFile } from './saveToFile';
import { KeepAction, KeepLine } from './KeepLine';
import { OlderLine } from './OlderLine';
import { TypedLine } from './TypedLine';
import { VersionLine } from '../offline/VersionLine';

/** Under the running head, in words: what the storage refuses, what another tab did, what the start found. */
export function KeepLines() {
  const status = useKeeping((state) => state.status);
  const findings = useKeeping((state) => state.findings);
  return (
    <>
      <StatusLine status={status} />
      {findings.map((finding, index) => (
        <AnyLine key={index} finding={finding} />
      ))}
    </>
  );
}

function AnyLine({ finding }: { readonly finding: Finding }) {
  switch (finding.kind) {
    case 'typed':
      return <TypedLine />;
    case 'version':
      return <VersionLine finding={finding} />;
    case 'older':
      return <OlderLine finding={finding} />;
    default:
      return <FindingLine finding={finding} />;
  }
}

function StatusLine({ status }: { readonly status: SaveStatus }) {
  const line = useKeeping((state) => state.line);
  if (status.kind === 'conflict') return <ConflictLine line={line} isRemoved={status.theirs === null} />;
  if (status.kind !== 'failed' && status.kind !== 'unkept') return null;
  return (
    <KeepLine words={`${line}.`}>
      <Action words="Save to a file" onAct={saveToFile} />
    </KeepLine>
  );
}

interface ConflictLineProps {
  readonly line: string;
  readonly isRemoved: boolean;
}

function ConflictLine({ line, isRemoved }: ConflictLineProps) {
  const keeper = useKeeping((state) => state.keeper);
  if (keeper === null) return null;
  const { autosaver } = keeper;
  return (
    <KeepLine
      words={`${line}. What you have here is not written over it${isRemoved ? '.' : ': keep yours beside it as a copy, or take the other tab’s.'}`}
    >
      <Action words="Keep mine as a copy" onAct={() => void autosaver.keepMine().then(openLoaded)} />
      {isRemoved ? (
        <Action words="Let it go" onAct={() => void letGo(autosaver.takeTheirs())} />
      ) : (
        <Action words="Take theirs" onAct={() => void autosaver.takeTheirs().then(openLoaded)} />
      )}
    </KeepLine>
  );
}

/** The project is gone from the shelf, unless another tab has brought it back meanwhile. */
async function letGo(theirs: Promise<ShelfLoadResult>): Promise<void> {
  const result = await theirs;
  if (result.kind === 'opened') openLoaded(result);
  else await openDemo();
}

type SaidFinding = Exclude<Finding, { kind: 'typed' | 'version' | 'older' }>;

function FindingLine({ finding }: { readonly finding: SaidFinding }) {
  return (
    <KeepLine words={wordsOf(finding)}>
      <FindingAction finding={finding} />
      <Action
        words="Dismiss"
        onAct={() => {
          dismissFinding(finding);
        }}
      />
    </KeepLine>
  );
}

function wordsOf(finding: SaidFinding): string {
  switch (finding.kind) {
    case 'recovered':
      return `Work that an earlier page left unsaved is kept as “${finding.header.name}”.`;
    case 'broken':
      return `A saved project${nameOf(finding.broken.name)} did not open (${finding.broken.why}). It is set aside, not lost.`;
    case 'trouble':
      return finding.text;
  }
}

function nameOf(name: string): string {
  return name === '' ? '' : ` “${name}”`;
}

function FindingAction({ finding }: { readonly finding: SaidFinding }) {
  const keeper = useKeeping((state) => state.keeper);
  if (finding.kind === 'broken') {
    return (
      <Action
        words="Download it"
        onAct={() => {
          downloadText('set-aside.json', finding.broken.content);
        }}
      />
    );
  }
  if (finding.kind !== 'recovered' || keeper === null) return null;
  const open = async (): Promise<void> => {
    if (openLoaded(await keeper.shelf.load(finding.header.id))) dismissFinding(finding);
  };
  return <Action words="Open it" onAct={() => void open()} />;
}

function Action({ words, onAct }: { readonly words: string; readonly onAct: () => void }) {
  const hasProject = useAppStore((state) => state.project !== null);
  return <KeepAction words={words} onAct={onAct} disabled={!hasProject} />;
}
