import { createStore, promisifyRequest } from 'idb-keyval';
import type { Change, KeyValue } from './keyValue';

/** The browser's own database. Nothing is touched before the first call, so a forbidden database rejects there. */
export function indexedDbKeyValue(databaseName = 'windtoll'): KeyValue {
  const inStore = createStore(databaseName, 'shelf');
  return {
    isKept: true,
    keys: async (prefix) => {
      const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
      const found = await inStore('readonly', (store) => promisifyRequest(store.getAllKeys(range)));
      return found.filter((key) => typeof key === 'string');
    },
    // Async, because createStore throws at once where there is no database.
    transact: async (keys, change) => inStore('readwrite', (store) => changeIn(store, keys, change)),
  };
}

async function changeIn<Answer>(
  store: IDBObjectStore,
  keys: readonly string[],
  change: (values: readonly unknown[]) => Change<Answer>,
): Promise<Answer> {
  const reads = Promise.all(keys.map((key) => promisifyRequest<unknown>(store.get(key))));
  const answer = reads.then((values) => writeIn(store, change(values)));
  // The transaction tells of a full disk only at its end.
  const [answered] = await Promise.all([answer, finished(store.transaction)]);
  return answered;
}

/** Only an abort knows its cause: at a failed request's own error event the transaction does not have it yet. */
function finished(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => {
      resolve();
    };
    transaction.onabort = () => {
      reject(transaction.error ?? new DOMException('', 'AbortError'));
    };
  });
}

function writeIn<Answer>(store: IDBObjectStore, { writes, answer }: Change<Answer>): Answer {
  try {
    for (const [key, value] of writes) {
      if (value === undefined) store.delete(key);
      else store.put(value, key);
    }
  } catch (thrown) {
    store.transaction.abort();
    throw thrown;
  }
  // Otherwise the browser waits for the page to answer, and a page that is being closed does not.
  store.transaction.commit();
  return answer;
}
