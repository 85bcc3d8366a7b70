import { useState } from 'react';
import type { EnvelopeTexts } from '../../project/envelope/envelopeTexts';
import { readScribble, type ScribblePiece } from '../../project/envelope/readScribble';
import { longestScribble } from './envelopeWords';

interface ScribbleBoxProps {
  readonly scribble: string;
  readonly texts: EnvelopeTexts;
  readonly onScribble: (scribble: string) => void;
  readonly onTexts: (texts: EnvelopeTexts) => void;
}

/** The estimate as one text, read into the fields when asked. */
export function ScribbleBox({ scribble, texts, onScribble, onTexts }: ScribbleBoxProps) {
  /** What stood in the fields before the text was read; null before that. */
  const [before, setBefore] = useState<EnvelopeTexts | null>(null);
  /** The text that was read last: the pieces speak of that one. */
  const [read, setRead] = useState<string | null>(null);
  const readIt = (): void => {
    setBefore(texts);
    setRead(scribble);
    onTexts(readScribble(scribble).texts);
  };
  const hadTexts = before !== null && Object.keys(before).length > 0;
  return (
    <section className="envelope-scribble" aria-label="The scribble">
      <label className="envelope-scribble-label muted" htmlFor="envelope-scribble">
        The scribble in one go
      </label>
      <textarea
        id="envelope-scribble"
        className="field-input"
        rows={2}
        value={scribble}
        maxLength={longestScribble}
        placeholder="16 posts 25 mm 0.7 m, Cd 0.6, 12 m/s, 170 W"
        onChange={(event) => {
          onScribble(event.target.value);
        }}
      />
      <p className="envelope-scribble-actions">
        <button
          type="button"
          className="plain-action"
          aria-disabled={scribble.trim() === ''}
          onClick={() => {
            if (scribble.trim() !== '') readIt();
          }}
        >
          Read it into the fields
        </button>
        {before !== null && (
          <button
            type="button"
            className="plain-action"
            onClick={() => {
              onTexts(before);
              setBefore(null);
              setRead(null);
            }}
          >
            {hadTexts ? 'Put back what stood in the fields' : 'Empty the fields again'}
          </button>
        )}
      </p>
      {read !== null && <Pieces pieces={readScribble(read).pieces} />}
    </section>
  );
}

/** The text again: what went where, and below it what went nowhere. */
function Pieces({ pieces }: { readonly pieces: readonly ScribblePiece[] }) {
  const puzzling = pieces.filter((piece) => piece.kind === 'notUnderstood');
  const understood = pieces.filter((piece) => piece.kind === 'understood');
  return (
    <div role="status" aria-label="What was understood">
      <p className="envelope-pieces">
        {pieces.map((piece, i) => (
          <span key={i} className={`envelope-piece-${piece.kind}`}>
            {piece.text}
          </span>
        ))}
      </p>
      <details>
        <summary>How each was read ({understood.length})</summary>
        <ul className="envelope-lines">
          {understood.map(({ how }, i) => (
            <li key={i}>{how}</li>
          ))}
        </ul>
      </details>
      {puzzling.length > 0 && (
        <ul className="envelope-lines">
          {puzzling.map(({ text, reason }, i) => (
            <li key={i}>
              <b>{text.trim()}</b>: {reason}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
