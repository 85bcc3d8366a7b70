import { timeText } from './clock';
import type { Theirs } from './shelfTypes';

/** How the open project stands with the storage. */
export type SaveStatus =
  /** The demo as it came: there is nothing to save. */
  | { readonly kind: 'untouched' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'saved'; readonly savedAt: string }
  /** Only this page's memory has it. */
  | { readonly kind: 'unkept' }
  | { readonly kind: 'failed'; readonly why: string }
  /** Another tab has saved or removed (`theirs` null) the project; nothing is written until the user decides. */
  | { readonly kind: 'conflict'; readonly theirs: Theirs };

/** The status in one line. */
export function statusText(status: SaveStatus): string {
  switch (status.kind) {
    case 'untouched':
      return '';
    case 'saving':
      return 'Saving';
    case 'saved':
      return `Saved in this browser ${timeText(new Date(status.savedAt))}`;
    case 'unkept':
      return 'This browser keeps nothing: save to a file';
    case 'failed':
      return `Not saved: ${status.why}. Save to a file`;
    case 'conflict':
      return status.theirs === null
        ? 'Another tab removed this project'
        : `Another tab saved this project at ${timeText(new Date(status.theirs.savedAt))}`;
  }
}
