/** Longest name in the file. */
const longestName = 200;

/** "Pole, copy", then "Pole, copy 2": the name of a copy, other than all that are taken. */
export function copyName(name: string, taken: readonly string[]): string {
  const original = name.replace(/, copy(?: \d+)?$/, '');
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? ', copy' : `, copy ${number}`;
    const candidate = nameWithEnding(original === '' ? name : original, ending);
    if (!taken.includes(candidate)) return candidate;
  }
}

/** "Plan", then "Plan 2": a name other than all that are taken. */
export function newName(name: string, taken: readonly string[]): string {
  for (let number = 1; ; number += 1) {
    const candidate = number === 1 ? name : `${name} ${number}`;
    if (!taken.includes(candidate)) return candidate;
  }
}

/** The name with an ending, cut to what the file holds and never through the middle of a character. */
export function nameWithEnding(name: string, ending: string): string {
  const cut = name.slice(0, longestName - ending.length).replace(/[\uD800-\uDBFF]$/, '');
  return `${cut}${ending}`;
}
