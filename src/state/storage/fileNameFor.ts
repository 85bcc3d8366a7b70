import type { Project } from '../../project/file/schema';

const mostCharacters = 80;

/** Names that some systems keep for devices, whatever follows the dot. */
const deviceName = /^(?:con|prn|aux|nul|com\d|lpt\d)$/i;

/** A file name from the project's own, with an ending: letters, digits, hyphens, underscores and single spaces, of any script. */
export function fileNameFor({ name }: Pick<Project, 'name'>, ending = '.windtoll.json'): string {
  const safe = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}_-]+/gu, ' ')
    .trim();
  const short = Array.from(safe).slice(0, mostCharacters).join('').trim();
  const base = short === '' || deviceName.test(short) ? `project ${short}`.trim() : short;
  return `${base}${ending}`;
}
