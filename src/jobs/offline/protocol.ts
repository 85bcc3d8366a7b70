/** What the page asks of its service worker. */
export type WorkerRequest =
  /** The person wants the new version now: the waiting worker takes the place of the one in force. */
  | { readonly kind: 'takeOver' }
  /** A page has started: what only pages of an earlier version needed may go, if they are gone. */
  | { readonly kind: 'tidy' };

/** The files of one build, as paths from the page's own folder. */
export interface FileList {
  /** A hash over the names and the bytes of all files. */
  readonly version: string;
  readonly page: string;
  /** The script that this page starts with: a page of another build names another. */
  readonly entry: string;
  /** All others; each carries a hash of its bytes in its name, so that equal names are equal files. */
  readonly assets: readonly string[];
}
