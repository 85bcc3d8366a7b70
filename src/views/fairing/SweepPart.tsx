import { memo, useMemo } from 'react';
import { benchCrossings } from '../../project/bench/benchCrossings';
import { sweepCandidate } from '../../project/bench/benchSweep';
import type { Currency, SweepOver, SweepQuestion } from '../../project/bench/benchTypes';
import type { Candidate } from '../../project/bench/candidates';
import { sweepQuestion, type BenchModel } from './benchModel';
import { currencyOf, type SweptCandidate } from './sweepCharts';
import { SweepFigure } from './SweepFigure';

interface SweepPartProps {
  readonly model: BenchModel;
  readonly currency: Currency;
  readonly isOtherTack: boolean;
  readonly about: string;
}

/**
 * Sweeps and crossings of all candidates; the core remembers those of candidates that did not change.
 * @param settled candidates at rest: a crossing is sought by bisection, and not for one that a slider is moving.
 */
function useSwept(
  model: BenchModel,
  over: SweepOver,
  isOtherTack: boolean,
  settled: readonly Candidate[] = model.candidates,
): { readonly swept: readonly SweptCandidate[]; readonly messages: readonly string[] } {
  return useMemo(
    () => sweepAll(model, sweepQuestion(model, over, isOtherTack), settled),
    [model, over, isOtherTack, settled],
  );
}

function sweepAll(
  model: BenchModel,
  question: SweepQuestion,
  settled: readonly Candidate[],
): ReturnType<typeof useSwept> {
  const swept: SweptCandidate[] = [];
  const messages: string[] = [];
  for (const candidate of model.candidates) {
    const answer = sweepCandidate(model.project, model.member, candidate, question);
    if (answer.ok) {
      const crossings = settled.includes(candidate) ? crossingsOf(model, candidate, question) : [];
      swept.push({ candidate, sweep: answer.sweep, crossings });
    } else messages.push(`${candidate.name}: ${answer.message}`);
  }
  return { swept, messages: [...new Set(messages)] };
}

function crossingsOf(
  { project, member, bare }: BenchModel,
  candidate: Candidate,
  question: SweepQuestion,
): SweptCandidate['crossings'] {
  if (candidate.kind === 'bare' || bare === null) return [];
  return benchCrossings(project, member, candidate, question);
}

interface AnglePartProps extends SweepPartProps {
  /** The model once it has come to rest: its crossings are named. */
  readonly settled: BenchModel;
}

/** Against the apparent wind angle, with every crossing named. */
export function AnglePart({ model, settled, currency, isOtherTack, about }: AnglePartProps) {
  const { swept, messages } = useSwept(model, 'apparentAngle', isOtherTack, settled.candidates);
  const atRest = useSwept(settled, 'apparentAngle', isOtherTack);
  return (
    <>
      <SweepFigure
        swept={swept}
        chosenId={model.chosen.id}
        currency={currency}
        about={about}
        heightPx={300}
      />
      {messages.map((message) => (
        <p key={message}>{message}</p>
      ))}
      <CrossingWords swept={atRest.swept} chosenId={settled.chosen.id} currency={currency} />
    </>
  );
}

interface CrossingWordsProps {
  readonly swept: readonly SweptCandidate[];
  readonly chosenId: string;
  readonly currency: Currency;
}

/** The chosen candidate in every currency, the others in the one that is drawn. */
const CrossingWords = memo(function CrossingWords({ swept, chosenId, currency }: CrossingWordsProps) {
  const compared = swept.filter(({ crossings }) => crossings.length > 0);
  if (compared.length === 0) return null;
  const chosen = compared.find(({ candidate }) => candidate.id === chosenId);
  const others = compared.filter((each) => each !== chosen);
  return (
    <section className="bench-crossings" aria-label="Crossings with the member as it stands">
      {chosen !== undefined && (
        <>
          <h4>{chosen.candidate.name} against the member as it stands</h4>
          <ul>
            {chosen.crossings.map((each) => (
              <li key={each.currency}>{each.text}</li>
            ))}
          </ul>
        </>
      )}
      {others.length > 0 && (
        <>
          <h4>The others, {currencyOf(currency).label}</h4>
          <ul>
            {others.map(({ candidate, crossings }) => (
              <li key={candidate.id}>
                {candidate.name}: {crossings.find((each) => each.currency === currency)?.text ?? ''}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
});

/** Against the wind's speed and the boat's. */
export const SpeedPart = memo(function SpeedPart({ model, currency, isOtherTack, about }: SweepPartProps) {
  const overWind = useSwept(model, 'apparentSpeed', isOtherTack);
  const overBoat = useSwept(model, 'boatSpeed', isOtherTack);
  const shared = { chosenId: model.chosen.id, currency, about, heightPx: 190 };
  return (
    <div className="bench-pair">
      <div>
        <SweepFigure swept={overWind.swept} {...shared} />
        <SpeedCrossings swept={overWind.swept} currency={currency} />
      </div>
      <div>
        <SweepFigure swept={overBoat.swept} {...shared} />
        <SpeedCrossings swept={overBoat.swept} currency={currency} />
      </div>
    </div>
  );
});

/** Every candidate in the currency that is drawn. */
function SpeedCrossings({ swept, currency }: Omit<CrossingWordsProps, 'chosenId'>) {
  const lines = swept.flatMap(({ candidate, crossings }) => {
    const text = crossings.find((each) => each.currency === currency)?.text;
    return text === undefined ? [] : [{ id: candidate.id, words: `${candidate.name}: ${text}` }];
  });
  return (
    <ul className="bench-crossings">
      {lines.map(({ id, words }) => (
        <li key={id}>{words}</li>
      ))}
    </ul>
  );
}
