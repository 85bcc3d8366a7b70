import { useEffect } from 'react';
import { dropTyped, keepTyped, showField, useTypedTexts } from '../../state/typedTexts';

/** Words that count only once a button takes them over: kept like half-typed text until then. */
export function useKeptText(typedFor: string, label: string): readonly [string, (text: string) => void] {
  const text = useTypedTexts(({ texts }) => texts.get(typedFor)?.text ?? '');
  useEffect(() => showField(typedFor), [typedFor]);
  const setText = (next: string): void => {
    if (next === '') dropTyped(typedFor);
    else keepTyped(typedFor, { text: next, label, refusal: null });
  };
  return [text, setText];
}
