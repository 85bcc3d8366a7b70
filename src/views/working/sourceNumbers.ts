import { sources, type Source, type SourceId } from '../../physics/sources';
import type { LineGroup } from './memberLines';

export interface NumberedSource extends Source {
  readonly id: SourceId;
  /** From 1, in the order of their first mention. */
  readonly number: number;
}

/** The sources that the lines name. */
export function numberedSources(groups: readonly LineGroup[]): NumberedSource[] {
  const ids = groups.flatMap(({ lines }) => lines.flatMap(({ quantity }) => quantity.source ?? []));
  return [...new Set(ids)].map((id, i) => ({ ...sources[id], id, number: i + 1 }));
}
