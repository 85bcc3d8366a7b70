import { useState } from 'react';
import type { EnvelopeCheck } from '../../project/envelope/envelopeCheck';
import { fittingFromEnvelope } from '../../project/envelope/envelopeFitting';
import { envelopeMarkdown } from '../../project/envelope/envelopeMarkdown';
import type { EnvelopeTexts } from '../../project/envelope/envelopeTexts';
import type { EnvelopeNumbers } from '../../project/envelope/readEnvelope';
import { addFitting } from '../../project/edit/fittingEdits';
import type { Project } from '../../project/file/schema';
import { useAppStore } from '../../state/appStore';

interface EnvelopeActionsProps {
  readonly texts: EnvelopeTexts;
  readonly numbers: EnvelopeNumbers;
  readonly check: EnvelopeCheck;
  readonly onShowFitting: (fittingId: string) => void;
}

/** Where a check goes from here: into the ledger, into a text, to somebody else. */
export function EnvelopeActions({ texts, numbers, check, onShowFitting }: EnvelopeActionsProps) {
  const project = useAppStore((state) => state.project);
  return (
    <section className="envelope-actions" aria-label="What to do with it">
      {project !== null && <MakeFitting project={project} numbers={numbers} onShowFitting={onShowFitting} />}
      <CopyAction
        words="Copy the check as text"
        name="The check as Markdown"
        text={() => envelopeMarkdown(texts, check)}
      />
      <CopyAction words="Copy the address" name="The address" text={() => window.location.href} />
    </section>
  );
}

interface MakeFittingProps {
  readonly project: Project;
  readonly numbers: EnvelopeNumbers;
  readonly onShowFitting: (fittingId: string) => void;
}

function MakeFitting({ project, numbers, onShowFitting }: MakeFittingProps) {
  const [wantedZone, setWantedZone] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const zoneId = project.zones.find(({ id }) => id === wantedZone)?.id ?? project.zones[0]?.id;
  if (zoneId === undefined) return null;
  const made = fittingFromEnvelope(numbers, project.boat, zoneId);
  const make = (): void => {
    if (!made.ok) return;
    const answer = useAppStore
      .getState()
      .edit('Make the envelope a fitting', (before) => addFitting(before, made.parts));
    const [newId] = 'refused' in answer ? [] : (answer.newIds ?? []);
    setRefusal('refused' in answer ? answer.refused.message : null);
    if (newId !== undefined) onShowFitting(newId);
  };
  return (
    <div className="envelope-make">
      <button type="button" className="plain-action" aria-disabled={!made.ok} onClick={make}>
        Make it a fitting
      </button>
      <label className="envelope-zone">
        <span className="muted">in the zone</span>
        <select
          value={zoneId}
          onChange={(event) => {
            setWantedZone(event.target.value);
          }}
        >
          {project.zones.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p className="envelope-said fine" role="status">
        {made.ok ? (refusal ?? made.parts.note) : made.message}
      </p>
    </div>
  );
}

interface CopyActionProps {
  readonly words: string;
  /** What is copied, for the field that holds it where the browser does not let the page copy. */
  readonly name: string;
  readonly text: () => string;
}

function CopyAction({ words, name, text }: CopyActionProps) {
  const [state, setState] = useState<'resting' | 'copied' | 'by hand'>('resting');
  return (
    <div className="envelope-copy">
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          void copied(text()).then((isCopied) => {
            setState(isCopied ? 'copied' : 'by hand');
          });
        }}
      >
        {words}
      </button>
      <span className="muted" role="status">
        {state === 'copied' && 'Copied.'}
        {state === 'by hand' && 'This browser does not let the page copy: take it from here.'}
      </span>
      {state === 'by hand' && (
        <textarea
          className="field-input"
          aria-label={name}
          readOnly
          rows={4}
          value={text()}
          onFocus={(event) => {
            event.target.select();
          }}
        />
      )}
    </div>
  );
}

async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
