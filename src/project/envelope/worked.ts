import type { EnvelopeFieldId } from './envelopeTexts';
import type { WrittenNumber } from './readEnvelope';
import { finite, isAgreeing, within, writtenExactly, writtenRounded, type Route } from './route';

/** A number of the estimate: what is written, and every route to it. */
export interface Worked {
  readonly written: WrittenNumber | null;
  readonly routes: readonly Route[];
  /** Null when there is nothing to compare. */
  readonly agrees: boolean | null;
  /** What the next step can be worked from: as written first. */
  readonly usable: readonly Route[];
}

export function worked(
  written: WrittenNumber | null,
  fieldId: EnvelopeFieldId,
  routes: readonly Route[],
): Worked {
  const known = finite(routes);
  if (written === null) return { written, routes: known, agrees: null, usable: known };
  if (known.length === 0)
    return { written, routes: known, agrees: null, usable: [writtenRounded(written, fieldId)] };
  const fitting = known.filter((route) => isAgreeing(route, written));
  return fitting.length > 0
    ? {
        written,
        routes: known,
        agrees: true,
        usable: [writtenExactly(written, fieldId), ...fitting.map((route) => within(route, written))],
      }
    : { written, routes: known, agrees: false, usable: [writtenRounded(written, fieldId), ...known] };
}

/** A number that stands exactly as written when nothing gives it. */
export function primary(
  written: WrittenNumber | null,
  fieldId: EnvelopeFieldId,
  routes: readonly Route[],
): Worked {
  const part = worked(written, fieldId, routes);
  return written === null || part.routes.length > 0
    ? part
    : { ...part, usable: [writtenExactly(written, fieldId)] };
}
