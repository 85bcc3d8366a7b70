import { useEffect, useRef } from 'react';

/**
 * Gives the focus to an element, by its id, as soon as the page shows it: an edit has made it, or has taken away what
 * had the focus. The text of a field is selected, to be typed over.
 */
export function useFocusNext(): (id: string) => void {
  const wantedId = useRef<string | null>(null);
  useEffect(() => {
    if (wantedId.current === null) return;
    const element = document.getElementById(wantedId.current);
    if (element === null) return;
    wantedId.current = null;
    element.focus();
    if (element instanceof HTMLInputElement && element.type === 'text') element.select();
  });
  return (id) => {
    wantedId.current = id;
  };
}
