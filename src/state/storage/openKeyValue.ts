import { browserClock, type Clock } from './clock';
import { indexedDbKeyValue } from './indexedDbKeyValue';
import { openKey } from './records';
import { readAll, type KeyValue } from './keyValue';
import { memoryKeyValue } from './memoryKeyValue';

/** A database that has not answered by then is taken as refused: some browsers neither open nor refuse it. */
const longestWaitMs = 4000;

/** The browser's database when it can be read, else this page's memory. A full database can still be read. */
export async function openKeyValue(
  openDatabase: () => KeyValue = indexedDbKeyValue,
  clock: Clock = browserClock,
): Promise<KeyValue> {
  try {
    const database = openDatabase();
    await answered(readAll(database, [openKey]), clock);
    return database;
  } catch {
    return memoryKeyValue();
  }
}

async function answered(reading: Promise<unknown>, clock: Clock): Promise<void> {
  let cancel: (() => void) | undefined;
  const tooLate = new Promise<never>((_resolve, reject) => {
    cancel = clock.after(longestWaitMs, () => {
      reject(new Error('The database does not answer.'));
    });
  });
  try {
    await Promise.race([reading, tooLate]);
  } finally {
    cancel?.();
  }
}
