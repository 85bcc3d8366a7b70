import { EnvelopeBars } from '../../charts/EnvelopeBars';
import { envelopeBars } from '../../charts/envelopeBarGeometry';
import { useWidth } from '../../charts/useWidth';
import type { EnvelopeCheck, EnvelopeHandbook } from '../../project/envelope/envelopeCheck';
import type { EnvelopeNumbers } from '../../project/envelope/readEnvelope';
import { OutsideMark } from '../../ui/OutsideMark';
import { quantityIn, rangeIn } from '../../units/printIn';

interface HandbookPartProps {
  readonly check: EnvelopeCheck;
  readonly numbers: EnvelopeNumbers;
}

/** What a handbook uses for the shape in this wind, and how far the answer moves with it. */
export function HandbookPart({ check, numbers }: HandbookPartProps) {
  const { handbook, handbookMissing } = check;
  if (handbook === null) return handbookMissing === null ? null : <p className="muted">{handbookMissing}</p>;
  const { airPowerW, forceN, sentences, notices, sources } = handbook;
  return (
    <section className="envelope-handbook" aria-label="What a handbook uses">
      <p className="envelope-total">
        <b>{quantityIn(airPowerW.best, 'W')}</b>{' '}
        <span className="muted">
          {rangeIn(airPowerW.low, airPowerW.high, 'W')} of air power, {quantityIn(forceN.best, 'N')} (
          {rangeIn(forceN.low, forceN.high, 'N')})
        </span>
      </p>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {notices.map((notice) => (
        <p key={notice} className="envelope-outside">
          <OutsideMark />
          {notice}
        </p>
      ))}
      <Bars check={check} handbook={handbook} numbers={numbers} />
      <p className="fine">{sources.join('; ')}</p>
    </section>
  );
}

interface BarsProps extends HandbookPartProps {
  readonly handbook: EnvelopeHandbook;
}

function Bars({ check, numbers, handbook }: BarsProps) {
  const [ref, widthPx] = useWidth<HTMLElement>(360);
  const step = check.steps.find(({ id }) => id === 'power');
  const claim = numbers.power ?? numbers.horsepower;
  const claimedW = numbers.powerKind === 'track' ? null : (claim?.valueSi ?? null);
  return (
    <figure ref={ref}>
      <EnvelopeBars
        chart={envelopeBars(
          { claimedW, ownW: step?.computedSi ?? null, handbookW: handbook.airPowerW },
          widthPx,
        )}
      />
    </figure>
  );
}
