import { useEffect, useRef, useState, type RefObject } from 'react';

/** The width of an element in whole pixels, for charts that fill their pane; `firstPx` until it is known. */
export function useWidth<Element extends HTMLElement>(
  firstPx: number,
): readonly [ref: RefObject<Element | null>, widthPx: number] {
  const ref = useRef<Element>(null);
  const [widthPx, setWidthPx] = useState(firstPx);
  useEffect(() => {
    const element = ref.current;
    // The DOM of the view tests has no observer, and no layout either.
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setWidthPx(Math.floor(entry.contentRect.width));
    });
    observer.observe(element);
    return () => {
      observer.disconnect();
    };
  }, []);
  return [ref, widthPx];
}
