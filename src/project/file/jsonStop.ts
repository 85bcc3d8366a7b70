/** A text and how far into it the reading has come. */
interface Scan {
  readonly text: string;
  at: number;
}

/**
 * Where a text stops being JSON (RFC 8259): the index of the first character that cannot go on, the text's length when
 * it ends too soon, null when all of it is JSON. Of parsers only some tell, each in words of its own. It calls itself
 * once a level: for texts that `refusal` lets through.
 */
export function jsonStop(text: string): number | null {
  const scan = { text, at: 0 };
  if (!readValue(scan)) return scan.at;
  skipBlank(scan);
  return scan.at === text.length ? null : scan.at;
}

function readValue(scan: Scan): boolean {
  skipBlank(scan);
  switch (scan.text[scan.at]) {
    case '{':
      return readParts(scan, '}', readMember);
    case '[':
      return readParts(scan, ']', readValue);
    case '"':
      return readString(scan);
    case 't':
      return takeAll(scan, 'true');
    case 'f':
      return takeAll(scan, 'false');
    case 'n':
      return takeAll(scan, 'null');
    default:
      return readNumber(scan);
  }
}

/** Members or values with commas between, from the opening bracket to the closing one. */
function readParts(scan: Scan, close: string, readPart: (scan: Scan) => boolean): boolean {
  scan.at += 1;
  if (takeAfterBlank(scan, close)) return true;
  do {
    if (!readPart(scan)) return false;
  } while (takeAfterBlank(scan, ','));
  return takeAfterBlank(scan, close);
}

function readMember(scan: Scan): boolean {
  skipBlank(scan);
  return readString(scan) && takeAfterBlank(scan, ':') && readValue(scan);
}

function readString(scan: Scan): boolean {
  if (!takeOneOf(scan, '"')) return false;
  for (;;) {
    const character = scan.text[scan.at];
    if (character === undefined || character < ' ') return false;
    scan.at += 1;
    if (character === '"') return true;
    if (character === '\\' && !readEscape(scan)) return false;
  }
}

function readEscape(scan: Scan): boolean {
  if (!takeOneOf(scan, 'u')) return takeOneOf(scan, '"\\/bfnrt');
  const isHex = () => takeOneOf(scan, '0123456789abcdefABCDEF');
  return isHex() && isHex() && isHex() && isHex();
}

function readNumber(scan: Scan): boolean {
  takeOneOf(scan, '-');
  if (!takeOneOf(scan, '0') && !readDigits(scan)) return false;
  if (takeOneOf(scan, '.') && !readDigits(scan)) return false;
  if (!takeOneOf(scan, 'eE')) return true;
  takeOneOf(scan, '+-');
  return readDigits(scan);
}

function readDigits(scan: Scan): boolean {
  const from = scan.at;
  while (takeOneOf(scan, '0123456789'));
  return scan.at > from;
}

function skipBlank(scan: Scan): void {
  while (takeOneOf(scan, ' \t\n\r'));
}

function takeAfterBlank(scan: Scan, character: string): boolean {
  skipBlank(scan);
  return takeOneOf(scan, character);
}

function takeAll(scan: Scan, word: string): boolean {
  return Array.from(word).every((letter) => takeOneOf(scan, letter));
}

function takeOneOf(scan: Scan, characters: string): boolean {
  const character = scan.text[scan.at];
  if (character === undefined || !characters.includes(character)) return false;
  scan.at += 1;
  return true;
}
