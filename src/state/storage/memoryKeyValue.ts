import type { KeyValue } from './keyValue';

/** This page's memory, which takes over where the browser keeps nothing. Copies values as a database does. */
export function memoryKeyValue(entries = new Map<string, unknown>()): KeyValue {
  return {
    isKept: false,
    keys: (prefix) => Promise.resolve([...entries.keys()].filter((key) => key.startsWith(prefix))),
    transact: async (keys, change) => {
      await Promise.resolve();
      const { writes, answer } = change(keys.map((key) => structuredClone(entries.get(key))));
      const copies = writes.map(([key, value]) => [key, structuredClone(value)] as const);
      for (const [key, value] of copies) {
        if (value === undefined) entries.delete(key);
        else entries.set(key, value);
      }
      return answer;
    },
  };
}
