import { useId } from 'react';
import type { ViewKind } from '../../charts/windsEye/viewOf';
import { apparentWindAt, type SailingState } from '../../physics/condition/sailingState';
import { OneOfLine, OneOfWords, type Option } from '../../ui/OneOf';
import { fromSi, toSi } from '../../units/convert';
import { formatQuantity } from '../../units/print';
import { measureIds, measureLabels, type MeasureId } from './pictureModel';

interface LookChoicesProps {
  readonly kind: ViewKind;
  readonly onKind: (kind: ViewKind) => void;
  readonly measure: MeasureId;
  readonly onMeasure: (measure: MeasureId) => void;
  readonly hasFullPrice: boolean;
  readonly hasPlan: boolean;
}

const kinds: readonly Option<ViewKind>[] = [
  { id: 'wind', label: 'Along the wind' },
  { id: 'astern', label: 'From astern' },
  { id: 'side', label: 'From windward' },
  { id: 'above', label: 'From above' },
];

/** From where the boat is looked at, and what is coloured. */
export function LookChoices(props: LookChoicesProps) {
  const { kind, onKind, measure, onMeasure, hasFullPrice, hasPlan } = props;
  const measures = measureIds
    .filter((id) => (id !== 'fullPrice' || hasFullPrice) && (id !== 'saving' || hasPlan))
    .map((id) => ({ id, label: measureLabels[id] }));
  return (
    <div className="picture-choices">
      <OneOfWords label="Look" options={kinds} chosenId={kind} onChoose={onKind} />
      <OneOfLine label="coloured by" options={measures} chosenId={measure} onChoose={onMeasure} />
    </div>
  );
}

interface LookSlidersProps {
  readonly kind: ViewKind;
  readonly heightM: number;
  readonly deckM: number;
  readonly mastheadM: number;
  /** Null goes back to the deck. */
  readonly onHeight: (heightM: number | null) => void;
  readonly turnRad: number;
  readonly onTurn: (turnRad: number) => void;
  readonly state: SailingState;
}

/** At which height along the wind, and turned how far. */
export function LookSliders(props: LookSlidersProps) {
  return (
    <div className="picture-choices">
      {props.kind === 'wind' && <HeightSlider {...props} />}
      <TurnSlider turnRad={props.turnRad} onTurn={props.onTurn} />
    </div>
  );
}

function HeightSlider({ heightM, deckM, mastheadM, onHeight, state }: LookSlidersProps) {
  const id = useId();
  const wind = apparentWindAt(state, heightM);
  const isAtDeck = heightM === deckM;
  return (
    <div className="picture-slider">
      <label htmlFor={id}>
        {isAtDeck ? 'The wind at the deck, ' : 'The wind at '}
        {formatQuantity(heightM, 'm')}: {formatQuantity(wind.speedMs, 'kn')} from{' '}
        {formatQuantity(wind.angleFromBowRad, 'deg')}
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={Math.max(mastheadM, deckM, 1)}
        step={0.1}
        value={heightM}
        aria-valuetext={`${formatQuantity(heightM, 'm')} above the water`}
        onChange={(event) => {
          onHeight(Number(event.target.value));
        }}
      />
      {!isAtDeck && (
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            onHeight(null);
          }}
        >
          Back to the deck
        </button>
      )}
    </div>
  );
}

interface TurnSliderProps {
  readonly turnRad: number;
  readonly onTurn: (turnRad: number) => void;
}

function TurnSlider({ turnRad, onTurn }: TurnSliderProps) {
  const id = useId();
  const text = formatQuantity(turnRad, 'deg', { decimals: 0 });
  return (
    <div className="picture-slider">
      <label htmlFor={id}>
        {turnRad === 0 ? 'Turn her, here or with the hand' : `Looked at from ${text} further round`}
      </label>
      <input
        id={id}
        type="range"
        min={-180}
        max={180}
        step={1}
        value={Math.round(fromSi(turnRad, 'deg'))}
        aria-valuetext={text}
        onChange={(event) => {
          onTurn(toSi(Number(event.target.value), 'deg'));
        }}
      />
      {turnRad !== 0 && (
        <button
          type="button"
          className="plain-action"
          onClick={() => {
            onTurn(0);
          }}
        >
          Turn her back
        </button>
      )}
    </div>
  );
}
