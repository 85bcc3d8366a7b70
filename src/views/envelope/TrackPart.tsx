import type { EnvelopeCheck } from '../../project/envelope/envelopeCheck';
import { quantityIn, rangeIn } from '../../units/printIn';

/** What the air gives against what the boat pays. */
export function TrackPart({ check: { track, trackMissing } }: { readonly check: EnvelopeCheck }) {
  if (track === null && trackMissing === null) return null;
  return (
    <section aria-labelledby="envelope-track">
      <h3 id="envelope-track">Air power against track power</h3>
      {track === null ? (
        <p className="muted">{trackMissing}</p>
      ) : (
        <>
          <dl className="envelope-pair">
            <dt>air power</dt>
            <dd>
              <b>{quantityIn(track.airPowerW.best, 'W')}</b> <Spread of={track.airPowerW} />
            </dd>
            <dt>track power</dt>
            <dd>
              <b>{quantityIn(track.trackPowerW.best, 'W')}</b> <Spread of={track.trackPowerW} />
            </dd>
          </dl>
          <p className="envelope-formula muted">{track.formula}</p>
          {track.sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </>
      )}
    </section>
  );
}

interface SpreadProps {
  readonly of: { readonly low: number; readonly high: number };
}

function Spread({ of: { low, high } }: SpreadProps) {
  return low === high ? null : <span className="fine">{rangeIn(low, high, 'W')}</span>;
}
