import type { ProjectFlags } from '../../project/file/schema';

export interface FlagLetter {
  readonly letter: string;
  readonly words: string;
}

/** The letters of the flags, in the order in which they stand in a row and in the key. */
export const flagKey = [
  { letter: 's', words: 'safety-required' },
  { letter: 'c', words: 'class rule' },
  { letter: 't', words: 'structural' },
  { letter: 'm', words: 'moving part' },
] as const satisfies readonly FlagLetter[];

/** The letters of one fitting's or item's flags. An item has no safety flag of its own. */
export function flagLetters(
  flags: Omit<ProjectFlags, 'safetyRequired'> & { readonly safetyRequired?: boolean },
): FlagLetter[] {
  const isSet = [flags.safetyRequired === true, flags.classRule !== null, flags.structural, flags.movingPart];
  return flagKey.filter((_, i) => isSet[i]);
}
