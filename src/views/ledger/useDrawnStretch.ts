import { useEffect, useLayoutEffect, useState, type RefObject } from 'react';
import { flushSync } from 'react-dom';
import { useMediaQuery } from '../../ui/useMediaQuery';
import type { Stretch } from './ledgerLines';

/** From how many lines on only those in sight are drawn. A shorter ledger stays whole: the browser's own search finds all of it. */
const longFrom = 80;

/**
 * Drawn beyond what is in sight, px: a turn of the wheel glides over several frames, and each draws what it comes to. More
 * would be drawn at every edit for nothing.
 */
const overscanPx = 56;
/** The stretch moves on in steps of so many px: not each pixel of scrolling draws anew. */
const stepPx = 28;

/**
 * The stretch of a long ledger's lines that is drawn: what is in sight and a little more. Null where all lines are drawn:
 * in a short ledger, on paper, and where nothing is laid out.
 * @param tableRef the table whose first group is the first line.
 */
export function useDrawnStretch(
  tableRef: RefObject<HTMLTableElement | null>,
  lineCount: number,
): Stretch | null {
  const isPrinting = useIsPrinting();
  const isWindowed = lineCount > longFrom && !isPrinting;
  const [stretch, setStretch] = useState<Stretch | null>(firstGuess);

  // Before the first paint; after that at every scroll and change of size.
  useLayoutEffect(() => {
    const table = tableRef.current;
    const box = table?.closest<HTMLElement>('.ledger-scroll');
    if (!isWindowed || table === null || box === undefined || box === null) return;
    const look = () => {
      setStretch((before) => stretchInSight(table, box, before));
    };
    const onScroll = () => {
      // In the frame that shows the new place, not in the one after.
      flushSync(look);
    };
    look();
    box.addEventListener('scroll', onScroll, { passive: true });
    const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(look);
    observer?.observe(box);
    return () => {
      box.removeEventListener('scroll', onScroll);
      observer?.disconnect();
    };
  }, [tableRef, isWindowed]);

  return isWindowed ? stretch : null;
}

/** As high as the page, so that a long ledger need not be drawn whole to be measured. */
function firstGuess(): Stretch {
  return { fromPx: 0, toPx: window.innerHeight };
}

/** The same object while it stays the same. A ledger that is not on the screen keeps what it had. */
function stretchInSight(table: HTMLTableElement, box: HTMLElement, before: Stretch | null): Stretch | null {
  const rows = table.tBodies[0];
  if (rows === undefined) return before;
  const heightPx = box.clientHeight;
  if (heightPx === 0) return isLaidOut() ? before : null;
  const scrolledPx = box.getBoundingClientRect().top - rows.getBoundingClientRect().top;
  const fromPx = stepPx * Math.floor(scrolledPx / stepPx) - overscanPx;
  const toPx = stepPx * Math.ceil((scrolledPx + heightPx) / stepPx) + overscanPx;
  return before?.fromPx === fromPx && before.toPx === toPx ? before : { fromPx, toPx };
}

/** False in the DOM of the view tests. */
function isLaidOut(): boolean {
  return document.documentElement.clientHeight > 0;
}

/** True while the page is laid out for paper: there every line is drawn. */
function useIsPrinting(): boolean {
  const isPaper = useMediaQuery('print');
  const [isAsked, setIsAsked] = useState(false);
  useEffect(() => {
    // The browser lays out the paper as soon as the event is over.
    const onBefore = () => {
      flushSync(() => {
        setIsAsked(true);
      });
    };
    const onAfter = () => {
      setIsAsked(false);
    };
    window.addEventListener('beforeprint', onBefore);
    window.addEventListener('afterprint', onAfter);
    return () => {
      window.removeEventListener('beforeprint', onBefore);
      window.removeEventListener('afterprint', onAfter);
    };
  }, []);
  return isPaper || isAsked;
}
