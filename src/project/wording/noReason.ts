/** The reason of a fitting that was left out by a single key, until somebody types theirs. */
export const noReasonYet = 'No reason given yet';
