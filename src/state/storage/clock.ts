/** Time, so that tests can hold it still. */
export interface Clock {
  now(): Date;
  /** Runs once after the delay; the answer cancels it. */
  after(delayMs: number, run: () => void): () => void;
}

export const browserClock: Clock = {
  now: () => new Date(),
  after: (delayMs, run) => {
    const timer = setTimeout(run, delayMs);
    return () => {
      clearTimeout(timer);
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
