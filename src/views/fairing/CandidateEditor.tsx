import { useState } from 'react';
import type { BenchMember } from '../../project/bench/benchTypes';
import {
  candidateKinds,
  mostCandidates,
  startCandidate,
  type Candidate,
  type CandidateKind,
  type CandidateProblem,
} from '../../project/bench/candidates';
import { changeBench } from '../../state/bench';
import { useFocusNext } from '../../ui/useFocusNext';
import { CandidateFields } from './CandidateFields';
import { candidateRadioId } from './focusIds';

interface CandidateEditorProps {
  readonly member: BenchMember;
  readonly candidates: readonly Candidate[];
  readonly chosen: Candidate;
  readonly problems: readonly CandidateProblem[];
  readonly currencyName: string;
}

/** The fields of the chosen candidate, and what is done with candidates as a whole. */
export function CandidateEditor(props: CandidateEditorProps) {
  const { member, candidates, chosen, problems, currencyName } = props;
  const focusNext = useFocusNext();
  const [said, setSaid] = useState('');
  const put = (next: readonly Candidate[], chosenId: string, words: string): void => {
    changeBench({ candidates: next, chosenId });
    setSaid(words);
    focusNext(candidateRadioId(chosenId));
  };
  const isFull = candidates.length >= mostCandidates;
  const add = (made: Candidate): void => {
    put([...candidates, made], made.id, `${made.name} is on the bench.`);
  };
  return (
    <section className="bench-editor" aria-label="The chosen candidate">
      <AddCandidate
        isFull={isFull}
        onAdd={(kind) => {
          add(startCandidate(kind, member, freeId(candidates)));
        }}
      />
      <h3>{chosen.name}</h3>
      <CandidateFields
        key={chosen.id}
        memberId={member.fitting.id}
        candidate={chosen}
        problems={problems}
        currencyName={currencyName}
        onChange={(next) => {
          changeBench({
            candidates: candidates.map((each) => (each.id === next.id ? next : each)),
            chosenId: next.id,
          });
        }}
      />
      <div className="bench-words">
        <button
          type="button"
          className="plain-action"
          disabled={isFull}
          onClick={() => {
            add({ ...chosen, id: freeId(candidates), name: copyName(chosen.name, candidates) });
          }}
        >
          Duplicate it
        </button>
        <button
          type="button"
          className="plain-action"
          disabled={candidates.length === 1}
          onClick={() => {
            const index = candidates.indexOf(chosen);
            const left = candidates.filter((each) => each !== chosen);
            const next = left[Math.min(index, left.length - 1)];
            if (next !== undefined) put(left, next.id, `${chosen.name} is off the bench.`);
          }}
        >
          Take it off
        </button>
      </div>
      <p className="fine bench-said" role="status">
        {said}
      </p>
    </section>
  );
}

interface AddCandidateProps {
  readonly isFull: boolean;
  readonly onAdd: (kind: CandidateKind) => void;
}

function AddCandidate({ isFull, onAdd }: AddCandidateProps) {
  const [kind, setKind] = useState<CandidateKind>('section');
  return (
    <div className="bench-add">
      <label className="one-of-line">
        <span className="muted">Add</span>
        <select
          value={kind}
          onChange={(event) => {
            const found = candidateKinds.find(({ id }) => id === event.target.value);
            if (found !== undefined) setKind(found.id);
          }}
        >
          {candidateKinds.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <button
        type="button"
        className="plain-action"
        disabled={isFull}
        onClick={() => {
          onAdd(kind);
        }}
      >
        Put on the bench
      </button>
      {isFull && <span className="fine">{mostCandidates} stand there; take one off first.</span>}
    </div>
  );
}

/** "c1", "c2": the first that no candidate has. */
function freeId(candidates: readonly Candidate[]): string {
  let number = candidates.length + 1;
  while (candidates.some(({ id }) => id === `c${number}`)) number += 1;
  return `c${number}`;
}

/** "Sleeve 2", "Sleeve 3". */
function copyName(name: string, candidates: readonly Candidate[]): string {
  const stem = name.replace(/ \d+$/, '');
  let number = 2;
  while (candidates.some((each) => each.name === `${stem} ${number}`)) number += 1;
  return `${stem} ${number}`;
}
