import { useId, useState, type KeyboardEvent, type SyntheticEvent } from 'react';
import {
  countSoFar,
  quickFieldsOf,
  readQuickEntry,
  type QuickErrors,
  type QuickField,
  type QuickReading,
  type QuickTexts,
} from '../../project/survey/quickEntry';
import { useQuickAdding } from '../../state/quickAdd';
import type { TypedTexts } from '../../state/storage/typedRecords';
import { dropTyped, useTypedTexts } from '../../state/typedTexts';
import { useFocusNext } from '../../ui/useFocusNext';
import { addToStore } from './addToStore';
import { quickFields, quickUnits, typedForField } from './quickFields';

/** What the form says of itself: what was done, what the project's rules refused, whether Add was pressed in vain. */
interface Said {
  readonly line: string;
  readonly refused: QuickErrors;
  readonly refusedTexts: TypedTexts | null;
  readonly problem: string;
  readonly isAsked: boolean;
}

const nothingSaid: Said = { line: '', refused: {}, refusedTexts: null, problem: '', isAsked: false };

interface QuickForm {
  readonly reading: QuickReading;
  readonly errors: QuickErrors;
  readonly count: number;
  readonly said: Said;
  /** Grows with each fitting added, whose fields are then new ones. */
  readonly entryNumber: number;
  readonly idOf: (field: QuickField) => string;
  readonly add: (event: SyntheticEvent) => void;
  /** Enter goes on to the next field that lacks something, and adds when none does. */
  readonly goOn: (event: KeyboardEvent) => void;
  /** Says what was done elsewhere in the place, and goes back to the name. */
  readonly say: (line: string) => void;
}

function textsIn(kept: TypedTexts): QuickTexts {
  return Object.fromEntries(quickFields.map((field) => [field, kept.get(typedForField(field))?.text ?? '']));
}

export function useQuickForm(): QuickForm {
  const choices = useQuickAdding((state) => state.choices);
  const kept = useTypedTexts(({ texts }) => texts);
  const [said, setSaid] = useState<Said>(nothingSaid);
  const [entryNumber, setEntryNumber] = useState(0);
  const focusNext = useFocusNext();
  const ids = useId();
  const idOf = (field: QuickField): string => `${ids}-${field}`;
  const texts = textsIn(kept);
  const reading = readQuickEntry(texts, choices, quickUnits());
  const wrong = reading.ok
    ? []
    : quickFieldsOf(choices.shape).filter((field) => reading.errors[field] !== undefined);
  const focus = (field: QuickField | undefined): void => {
    if (field !== undefined) document.getElementById(idOf(field))?.focus();
  };

  const add = (event: SyntheticEvent): void => {
    event.preventDefault();
    if (!reading.ok) {
      setSaid({ ...nothingSaid, isAsked: true });
      focus(wrong[0]);
      return;
    }
    const answer = addToStore(reading.entry);
    if ('refused' in answer) {
      setSaid({ ...nothingSaid, ...answer, refusedTexts: kept, isAsked: true });
      return;
    }
    for (const field of quickFields) dropTyped(typedForField(field));
    setSaid({ ...nothingSaid, line: answer.line });
    setEntryNumber(entryNumber + 1);
    focusNext(idOf('name'));
  };

  const goOn = (event: KeyboardEvent): void => {
    if (
      event.key !== 'Enter' ||
      event.nativeEvent.isComposing ||
      !(event.target instanceof HTMLInputElement)
    ) {
      return;
    }
    const hereId = event.target.id;
    const order = quickFieldsOf(choices.shape);
    const here = order.findIndex((field) => idOf(field) === hereId);
    const lacking = wrong.filter((field) => idOf(field) !== hereId);
    const next = lacking.find((field) => order.indexOf(field) > here) ?? lacking[0];
    if (next === undefined) return;
    event.preventDefault();
    focus(next);
  };

  return {
    reading,
    // A refusal is about the texts that were refused.
    errors: !reading.ok ? reading.errors : said.refusedTexts === kept ? said.refused : {},
    count: countSoFar(texts),
    said,
    entryNumber,
    idOf,
    add,
    goOn,
    say: (line) => {
      setSaid({ ...nothingSaid, line });
      focus('name');
    },
  };
}
