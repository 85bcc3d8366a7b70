import { useDeferredValue, useEffect, useMemo, useRef } from 'react';
import { benchMembers } from '../../project/bench/benchMember';
import type { Project } from '../../project/file/schema';
import { cautions } from '../../project/wording/cautions';
import { useAppStore, useLedger } from '../../state/appStore';
import { arriveOnBench, putOnBench, unwrittenWords, useBench } from '../../state/bench';
import { usualTyped, type Bench } from '../../state/benchAddress';
import { unitsInOneWord, usePreferences } from '../../state/preferences';
import { Bench as BenchView } from './Bench';
import { candidatesOf, chosenOf, conditionIdOf, insteadText, memberOf } from './benchModel';
import './fairing.css';
import './fairingTables.css';

interface FairingPlaceProps {
  /** The bench as the address holds it. */
  readonly words: string;
  readonly onWords: (words: string) => void;
  readonly onShowItem: (planId: string, itemId: string) => void;
}

/** The fairing bench: one member, up to six candidates for its place. */
export function FairingPlace({ words, onWords, onShowItem }: FairingPlaceProps) {
  const project = useAppStore((state) => state.project);
  const bench = useBench((state) => state.bench);
  const isThere = useBench((state) => state.words !== null);
  useBenchAddress(words, onWords, bench);
  if (project === null || !isThere) return <p className="opening muted">Opening the project.</p>;
  return <OpenBench project={project} bench={bench} onShowItem={onShowItem} />;
}

/** A slider would write dozens of addresses a second, which browsers refuse. */
const writeAfterMs = 300;

/** Keeps the bench and the address together; what is not written yet is written when the place is left. */
function useBenchAddress(words: string, onWords: (words: string) => void, bench: Bench): void {
  const write = useRef(onWords);
  useEffect(() => {
    write.current = onWords;
  });
  useEffect(() => {
    arriveOnBench(words);
  }, [words]);
  useEffect(() => {
    const timer = setTimeout(() => {
      writeWith(write.current);
    }, writeAfterMs);
    return () => {
      clearTimeout(timer);
    };
  }, [bench]);
  useEffect(() => {
    const writeNow = (): void => {
      writeWith(write.current);
    };
    window.addEventListener('pagehide', writeNow);
    return () => {
      window.removeEventListener('pagehide', writeNow);
      writeNow();
    };
  }, []);
}

function writeWith(onWords: (words: string) => void): void {
  const next = unwrittenWords();
  if (next !== null) onWords(next);
}

interface OpenBenchProps {
  readonly project: Project;
  readonly bench: Bench;
  readonly onShowItem: (planId: string, itemId: string) => void;
}

function OpenBench({ project, bench, onShowItem }: OpenBenchProps) {
  const ledger = useLedger();
  const basis = useAppStore((state) => state.question.basis);
  const selectedId = useAppStore((state) => state.selectedFittingId);
  // Charts and sentences remember what they were drawn from, which the reader's units are no part of.
  const readersUnits = usePreferences(unitsInOneWord);
  const { memberId, typed } = bench;
  const member = useMemo(
    () => memberOf(project, { memberId, typed }, selectedId),
    [project, memberId, typed, selectedId],
  );
  const candidates = useMemo(
    () => (member === null ? [] : candidatesOf(bench.candidates, member)),
    [bench.candidates, member],
  );
  const chosen = chosenOf(candidates, bench.chosenId);
  // What is typed and slid answers at once; what is worked out of it follows.
  const workedOut = useDeferredValue(candidates);
  if (member === null || chosen === undefined) return <NoMember project={project} />;
  if (ledger === null) {
    return (
      <p className="bench-empty">Without a sailing condition no wind blows here: add one in the ledger.</p>
    );
  }
  return (
    <>
      <BenchView
        key={readersUnits}
        project={project}
        bench={bench}
        member={member}
        candidates={candidates}
        workedOut={workedOut}
        chosen={chosen}
        basis={basis}
        conditionId={conditionIdOf(ledger, basis)}
        instead={insteadText(project, bench, selectedId, member)}
        onShowItem={onShowItem}
      />
      <footer className="bench-cautions">
        {[cautions[0], cautions[2], cautions[3], cautions[4]].map((sentence) => (
          <p key={sentence} className="fine">
            {sentence}
          </p>
        ))}
      </footer>
    </>
  );
}

/** The next step where the ledger has no bar. */
function NoMember({ project }: { readonly project: Project }) {
  return (
    <div className="bench-empty">
      <h2 className="bench-title">Fairing bench</h2>
      <p>
        {benchMembers(project).length === 0
          ? 'No bar, wire or section stands in the ledger: add one there, or type one here.'
          : 'Choose a row of the ledger.'}
      </p>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          putOnBench({ memberId: null, typed: usualTyped });
        }}
      >
        Type a member
      </button>
    </div>
  );
}
