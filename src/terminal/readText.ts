import { closeSync, openSync, readSync } from 'node:fs';
import { mostBytes } from '../project/file/guard';

export type ReadText =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly message: string };

const messages: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EISDIR: 'this is a folder, not a file',
  EACCES: 'the file may not be read',
  EPERM: 'the file may not be read',
  ENAMETOOLONG: 'the name is too long for a file',
};

/** Reads a text file, one byte past the largest project at most, so that an endless device ends too. */
export function readText(path: string): ReadText {
  try {
    const bytes = readUpTo(path, mostBytes + 1);
    // The byte order mark stays in: opening a project knows what to do with it.
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch (thrown) {
    if (thrown instanceof Error && 'code' in thrown && typeof thrown.code === 'string') {
      if (thrown.code === 'ERR_ENCODING_INVALID_ENCODED_DATA') return notText;
      return { ok: false, message: messages[thrown.code] ?? `the file cannot be read (${thrown.code})` };
    }
    return notText;
  }
}

const notText: ReadText = { ok: false, message: 'the file is not UTF-8 text' };

function readUpTo(path: string, most: number): Uint8Array {
  const file = openSync(path, 'r');
  try {
    const bytes = new Uint8Array(most);
    let length = 0;
    while (length < most) {
      const read = readSync(file, bytes, length, most - length, null);
      if (read === 0) break;
      length += read;
    }
    return bytes.subarray(0, length);
  } finally {
    closeSync(file);
  }
}
