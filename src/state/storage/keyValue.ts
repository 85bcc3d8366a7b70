/** A key with its new value; undefined removes it. */
export type Write = readonly [key: string, value: unknown];

export interface Change<Answer> {
  readonly writes: readonly Write[];
  readonly answer: Answer;
}

/** Where projects are kept: the browser's database, or this page's memory. Every method may reject. */
export interface KeyValue {
  /** False when closing the page loses everything. */
  readonly isKept: boolean;
  keys(prefix: string): Promise<readonly string[]>;
  /**
   * Reads the keys, then writes what `change` answers: one transaction, all or nothing, and no other tab in between.
   * Without keys to read the writes leave at once, which a page that is being closed needs.
   */
  transact<Answer>(
    keys: readonly string[],
    change: (values: readonly unknown[]) => Change<Answer>,
  ): Promise<Answer>;
}

/** Reads without writing. */
export function readAll(store: KeyValue, keys: readonly string[]): Promise<readonly unknown[]> {
  return store.transact(keys, (values) => ({ writes: [], answer: values }));
}

/** Writes without reading. */
export function writeAll(store: KeyValue, writes: readonly Write[]): Promise<void> {
  return store.transact([], () => ({ writes, answer: undefined }));
}
