/** Whole terminal commands: ESC or CSI sequences, and strings (titles, links) up to their end. */
const escapeSequences =
  /(?:\u001b[\]PX^_]|[\u009d\u0090\u0098\u009e\u009f])[^\u0007\u001b\u009c]*(?:\u0007|\u001b\\|\u009c)?|(?:\u001b\[|\u009b)[0-?]*[ -/]*[@-~]?|\u001b[ -/]*[0-~]?/gu;
/** Control and format characters (reading direction, zero width), halves of characters, line separators. */
const unprintable = /[\p{C}\p{Zl}\p{Zp}]/gu;
const breaks = /[\t\n\v\f\r\u0085\u2028\u2029]+/gu;

/** Text from a file or a command line as one line that cannot disturb a terminal. */
export function safeLine(text: string): string {
  return text.replace(escapeSequences, '').replace(breaks, ' ').replace(unprintable, '');
}

/** What `JSON.stringify` leaves bare although a terminal acts on it: DEL, the C1 controls, format characters. */
const bareInJson = /[\u007f-\u009f\p{Cf}\p{Zl}\p{Zp}]/gu;

/** JSON text with those characters written as escapes: the same JSON to a reader, harmless on a screen. */
export function safeJson(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(bareInJson, (character) =>
    character
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
}
