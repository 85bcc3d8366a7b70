/** Largest file, bytes of UTF-8. */
export const mostBytes = 8_000_000;
/** Deepest nesting; a project needs nine. */
const deepest = 40;
/** Most values and keys; the largest project allowed has fewer. */
const mostValues = 1_000_000;

const code = {
  quote: 34,
  comma: 44,
  colon: 58,
  openList: 91,
  backslash: 92,
  closeList: 93,
  open: 123,
  close: 125,
};

/**
 * What forbids handing a text to the JSON parser, or null. Counts bytes, depth and values on the bare characters, so
 * that a hostile file costs one pass and no memory.
 */
export function refusal(text: string): string | null {
  if (text.trim() === '') return 'the file is empty';
  const tooLarge = `the file is larger than ${mostBytes / 1e6} MB`;
  if (text.length > mostBytes) return tooLarge;
  const { bytes, depth, values } = measured(text);
  if (bytes > mostBytes) return tooLarge;
  if (depth > deepest) return `the file nests ${depth} levels deep; at most ${deepest} are read`;
  if (values > mostValues) return `the file holds more than ${mostValues} values`;
  return null;
}

interface Measures {
  readonly bytes: number;
  readonly depth: number;
  readonly values: number;
}

function measured(text: string): Measures {
  let bytes = 0;
  let depth = 0;
  let deepestSoFar = 0;
  let values = 1;
  let inString = false;
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    bytes += bytesOf(unit);
    if (inString) {
      if (unit === code.quote) inString = false;
      else if (unit === code.backslash) {
        i += 1;
        bytes += bytesOf(text.charCodeAt(i));
      }
    } else if (unit === code.quote) inString = true;
    else if (unit === code.comma || unit === code.colon) values += 1;
    else if (unit === code.open || unit === code.openList) {
      depth += 1;
      if (depth > deepestSoFar) deepestSoFar = depth;
    } else if (unit === code.close || unit === code.closeList) depth -= 1;
  }
  return { bytes, depth: deepestSoFar, values };
}

/** Bytes of UTF-8 per UTF-16 unit: a pair of units makes four bytes. */
function bytesOf(unit: number): number {
  if (unit < 0x80) return 1;
  return unit < 0x800 || (unit >= 0xd800 && unit <= 0xdfff) ? 2 : 3;
}
