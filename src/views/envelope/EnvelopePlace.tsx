import { useMemo } from 'react';
import { checkEnvelope } from '../../project/envelope/checkEnvelope';
import type { EnvelopeTexts } from '../../project/envelope/envelopeTexts';
import { readEnvelope } from '../../project/envelope/readEnvelope';
import { cautions } from '../../project/wording/cautions';
import { useMediaQuery } from '../../ui/useMediaQuery';
import { EnvelopeActions } from './EnvelopeActions';
import { EnvelopeForm } from './EnvelopeForm';
import { HandbookPart } from './HandbookPart';
import { ScribbleBox } from './ScribbleBox';
import { SpeedTable } from './SpeedTable';
import { StepsTable } from './StepsTable';
import { TrackPart } from './TrackPart';
import { Verdict } from './Verdict';
import { wordsOf, writtenFrom } from './envelopeWords';
import './envelope.css';

interface EnvelopePlaceProps {
  /** The numbers as the address holds them. */
  readonly words: string;
  readonly onWords: (words: string) => void;
  readonly onShowFitting: (fittingId: string) => void;
}

/** The numbers of a scribbled estimate, worked again. */
export function EnvelopePlace({ words, onWords, onShowFitting }: EnvelopePlaceProps) {
  const written = useMemo(() => writtenFrom(words), [words]);
  const { texts, scribble } = written;
  const { numbers, problems } = useMemo(() => readEnvelope(texts), [texts]);
  const check = useMemo(() => checkEnvelope(numbers), [numbers]);
  // In one column the verdict stands by what was typed, above the long form.
  const isNarrow = useMediaQuery('(max-width: 1099px)');
  const isBlank = Object.values(texts).every((text) => text.trim() === '');
  const write = (next: EnvelopeTexts): void => {
    onWords(wordsOf({ ...written, texts: next }));
  };
  return (
    <div className="envelope">
      <div className="envelope-written">
        <h2 className="envelope-title">Envelope check</h2>
        <p className="muted">Type what the scribble says, the claim included. Units as they were written.</p>
        <ScribbleBox
          scribble={scribble}
          texts={texts}
          onScribble={(next) => {
            onWords(wordsOf({ ...written, scribble: next }));
          }}
          onTexts={write}
        />
        {isNarrow && !isBlank && <Verdict check={check} />}
        <EnvelopeForm texts={texts} problems={problems} numbers={numbers} check={check} onTexts={write} />
      </div>
      <div className="envelope-answer">
        {isBlank ? (
          <p className="muted">
            The sum stands here as soon as there is something to work with: a speed, a size or an area, and a
            coefficient or a shape.
          </p>
        ) : (
          <>
            {!isNarrow && <Verdict check={check} />}
            <HandbookPart check={check} numbers={numbers} />
            <StepsTable steps={check.steps} />
            <TrackPart check={check} />
            {check.speedTable !== null && <SpeedTable table={check.speedTable} />}
            {check.assumptions.length > 0 && (
              <section aria-labelledby="envelope-assumed">
                <h3 id="envelope-assumed">Taken, because it was not written</h3>
                <ul className="envelope-lines">
                  {check.assumptions.map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
                </ul>
              </section>
            )}
            <EnvelopeActions texts={texts} numbers={numbers} check={check} onShowFitting={onShowFitting} />
          </>
        )}
        {cautions.slice(0, 2).map((sentence) => (
          <p key={sentence} className="fine">
            {sentence}
          </p>
        ))}
      </div>
    </div>
  );
}
