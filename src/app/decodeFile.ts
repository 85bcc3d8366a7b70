type DecodedFile =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly message: string };

const wayOut = 'save it again as UTF-8';

/** The bytes of a project file as text. A byte order mark stays in: opening a project knows what to do with it. */
export function decodeFile(bytes: Uint8Array): DecodedFile {
  if (isUtf16(bytes)) return { ok: false, message: `the file is UTF-16 text, not UTF-8; ${wayOut}` };
  const text = decoded(bytes);
  if (text !== null) return { ok: true, text };
  const message = `the file is not UTF-8 text: line ${firstBadLine(bytes)} holds bytes of another encoding, such as Latin-1; ${wayOut}`;
  return { ok: false, message };
}

/** Either byte order mark of UTF-16, or a bracket spread over two bytes. */
function isUtf16([first, second]: Uint8Array): boolean {
  if (first === undefined || second === undefined) return false;
  return (
    (first === 0xff && second === 0xfe) ||
    (first === 0xfe && second === 0xff) ||
    (first === 0) !== (second === 0)
  );
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

const lineFeed = 10;

/** Counted from 1; no character of UTF-8 spans a line feed, so each line stands for itself. */
function firstBadLine(bytes: Uint8Array): number {
  let line = 1;
  for (let from = 0; from < bytes.length; line += 1) {
    const end = bytes.indexOf(lineFeed, from);
    const to = end === -1 ? bytes.length : end;
    if (decoded(bytes.subarray(from, to)) === null) return line;
    from = to + 1;
  }
  return line;
}
