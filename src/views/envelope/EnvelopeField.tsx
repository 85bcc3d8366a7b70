import {
  envelopeLabels,
  envelopeOptions,
  type ChoiceFieldId,
  type EnvelopeFieldId,
  type EnvelopeOption,
} from '../../project/envelope/envelopeTexts';
import { longestFieldText } from '../../project/envelope/envelopeAddress';
import { FieldFrame } from '../../ui/fields/FieldFrame';
import type { Aside } from './asides';

export interface EnvelopeFieldProps {
  readonly id: EnvelopeFieldId;
  readonly text: string;
  readonly problem: string | null;
  readonly aside: Aside | null;
  readonly onText: (text: string) => void;
}

/** A number as it was written, and beside it what the other numbers give for it. */
export function EnvelopeField({ id, text, problem, aside, onText }: EnvelopeFieldProps) {
  return (
    <FieldFrame kind="line" field={{ id: `envelope-${id}`, label: envelopeLabels[id] }} problem={problem}>
      {(control) => (
        <span className="envelope-control">
          <input
            {...control}
            type="text"
            className={
              aside?.isContrary === true
                ? 'field-input field-number envelope-struck'
                : 'field-input field-number'
            }
            value={text}
            maxLength={longestFieldText}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            onChange={(event) => {
              onText(event.target.value);
            }}
          />
          <span className={aside?.isContrary === true ? 'envelope-aside envelope-right' : 'envelope-aside'}>
            {aside?.text}
          </span>
        </span>
      )}
    </FieldFrame>
  );
}

interface EnvelopeChoiceProps extends EnvelopeFieldProps {
  readonly choice: ChoiceFieldId;
}

/** One of a few; empty is "not said". */
export function EnvelopeChoice({ id, choice, text, problem, onText }: EnvelopeChoiceProps) {
  const options: readonly EnvelopeOption[] = envelopeOptions[choice];
  return (
    <FieldFrame kind="choice" field={{ id: `envelope-${id}`, label: envelopeLabels[id] }} problem={problem}>
      {(control) => (
        <select
          {...control}
          className="field-input"
          value={text}
          onChange={(event) => {
            onText(event.target.value);
          }}
        >
          <option value="">not said</option>
          {options.map((option) => (
            <option key={option.id} value={option.id}>
              {option.label}
            </option>
          ))}
          {/* What an address brought and no option is stays to be seen, with its problem below. */}
          {text !== '' && !options.some((option) => option.id === text) && (
            <option value={text}>{text}</option>
          )}
        </select>
      )}
    </FieldFrame>
  );
}
