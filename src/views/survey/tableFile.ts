import { mostCharacters } from '../../project/tables/readTable';

/** Bytes of a file, of which no character has more than four. */
const mostBytes = 4 * mostCharacters;

export type FileText =
  | { readonly ok: true; readonly text: string; readonly said: string }
  | { readonly ok: false; readonly message: string };

/** The text of a table's file: UTF-8, UTF-16 with its mark, else what older spreadsheets write (Windows 1252). */
export async function textOfFile(file: File): Promise<FileText> {
  if (file.size > mostBytes)
    return { ok: false, message: `${file.name} is larger than ${mostBytes / 1e6} MB; bring it in in parts.` };
  try {
    return decoded(new Uint8Array(await file.arrayBuffer()), file.name);
  } catch {
    return { ok: false, message: `The browser could not read ${file.name}; it may have been moved.` };
  }
}

function decoded(bytes: Uint8Array, name: string): FileText {
  const [first, second] = bytes;
  const isUtf16 = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
  if (isUtf16) {
    const text = new TextDecoder(first === 0xff ? 'utf-16le' : 'utf-16be').decode(bytes);
    return { ok: true, text, said: `${name} was read as UTF-16.` };
  }
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), said: '' };
  } catch {
    const text = new TextDecoder('windows-1252').decode(bytes);
    const said = `${name} is not UTF-8 and was read as Windows 1252: look at accents and signs.`;
    return { ok: true, text, said };
  }
}
