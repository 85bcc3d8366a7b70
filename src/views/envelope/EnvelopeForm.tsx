import type { EnvelopeCheck } from '../../project/envelope/envelopeCheck';
import type { EnvelopeFieldId, EnvelopeTexts } from '../../project/envelope/envelopeTexts';
import type { EnvelopeNumbers, EnvelopeReading } from '../../project/envelope/readEnvelope';
import { EnvelopeChoice, EnvelopeField, type EnvelopeFieldProps } from './EnvelopeField';
import { asideOf } from './asides';

interface EnvelopeFormProps {
  readonly texts: EnvelopeTexts;
  readonly problems: EnvelopeReading['problems'];
  readonly numbers: EnvelopeNumbers;
  readonly check: EnvelopeCheck;
  readonly onTexts: (texts: EnvelopeTexts) => void;
}

const choices = ['windKind', 'shape', 'ends', 'areaOf', 'powerKind', 'windAngleKind'] as const;
type Choice = (typeof choices)[number];

function isChoice(id: EnvelopeFieldId): id is Choice {
  return choices.some((choice) => choice === id);
}

/** Fields that matter only beside another one: out of the way until that one is filled, or they hold something. */
const besides: Readonly<Partial<Record<EnvelopeFieldId, (texts: EnvelopeTexts) => boolean>>> = {
  depth: ({ shape }) => shape === 'rectangularBar',
  areaOf: ({ area = '', count = '' }) => area !== '' && count !== '',
  powerKind: ({ power = '', horsepower = '' }) => power !== '' || horsepower !== '',
  windAngleKind: ({ windAngle = '' }) => windAngle !== '',
};

interface Group {
  readonly title: string;
  readonly fieldIds: readonly EnvelopeFieldId[];
}

const groups: readonly Group[] = [
  { title: 'The wind', fieldIds: ['speed', 'windKind', 'density'] },
  {
    title: 'What stands in it',
    fieldIds: ['shape', 'count', 'width', 'length', 'depth', 'ends', 'area', 'areaOf', 'coefficient'],
  },
  { title: 'The claim', fieldIds: ['force', 'power', 'powerKind', 'horsepower'] },
  { title: 'What the boat pays', fieldIds: ['boatSpeed', 'windAngle', 'windAngleKind'] },
];

const seldom: readonly EnvelopeFieldId[] = ['temperature', 'dragArea'];

/** Every number that an estimate may hold, as it was written. */
export function EnvelopeForm({ texts, problems, numbers, check, onTexts }: EnvelopeFormProps) {
  const propsOf = (id: EnvelopeFieldId): EnvelopeFieldProps => ({
    id,
    text: texts[id] ?? '',
    problem: problems[id] ?? null,
    aside: asideOf(id, numbers, check),
    onText: (text) => {
      onTexts(
        text === ''
          ? Object.fromEntries(Object.entries(texts).filter(([other]) => other !== id))
          : { ...texts, [id]: text },
      );
    },
  });
  const isShown = (id: EnvelopeFieldId): boolean =>
    (texts[id] ?? '') !== '' || (besides[id]?.(texts) ?? true);
  const render = (id: EnvelopeFieldId) =>
    isChoice(id) ? (
      <EnvelopeChoice key={id} {...propsOf(id)} choice={id} />
    ) : (
      <EnvelopeField key={id} {...propsOf(id)} />
    );
  return (
    <form
      className="envelope-form"
      onSubmit={(event) => {
        event.preventDefault();
      }}
    >
      {groups.map(({ title, fieldIds }) => (
        <fieldset key={title}>
          <legend>{title}</legend>
          {fieldIds.filter(isShown).map(render)}
        </fieldset>
      ))}
      <details open={seldom.some((id) => (texts[id] ?? '') !== '')}>
        <summary>Temperature, drag area</summary>
        {seldom.map(render)}
      </details>
    </form>
  );
}
