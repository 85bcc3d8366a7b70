/** Time, so that tests can hold it still. */
export interface Clock {
  now(): Date;
  /** Runs once after the delay; the answer cancels it. */
  after(delayMs: number, run: () => void): () => void;
  /** Runs once when the page has nothing to draw, at the latest after so long; the answer cancels it. */
  whenIdle(longestWaitMs: number, run: () => void): () => void;
}

export const browserClock: Clock = {
  now: () => new Date(),
  after: (delayMs, run) => {
    const timer = setTimeout(run, delayMs);
    return () => {
      clearTimeout(timer);
    };
  },
  whenIdle: (longestWaitMs, run) => {
    // Not every browser tells.
    if (typeof requestIdleCallback === 'undefined') return browserClock.after(0, run);
    const request = requestIdleCallback(run, { timeout: longestWaitMs });
    return () => {
      cancelIdleCallback(request);
    };
  },
};

/** Hours and minutes on the reader's own clock, as in "09:05". */
export function timeText(date: Date): string {
  return `${twoDigits(date.getHours())}:${twoDigits(date.getMinutes())}`;
}

/** Day and time on the reader's own clock, as in "2026-03-01 09:05". */
export function dayAndTimeText(date: Date): string {
  const day = `${date.getFullYear()}-${twoDigits(date.getMonth() + 1)}-${twoDigits(date.getDate())}`;
  return `${day} ${timeText(date)}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
