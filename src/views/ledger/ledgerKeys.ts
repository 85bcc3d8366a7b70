import type { RowCommand } from './rowCommands';

/** What a key means while a row has the focus. */
export type KeyMeaning =
  | { readonly kind: 'command'; readonly command: RowCommand }
  | {
      readonly kind: 'go';
      readonly to: 'up' | 'down' | 'first' | 'last';
      readonly picks: 'one' | 'range' | 'keep';
    }
  | { readonly kind: 'edit' }
  | { readonly kind: 'inPlace' }
  | { readonly kind: 'add' }
  | { readonly kind: 'pick' }
  | { readonly kind: 'letGo' };

interface KeyPress {
  readonly key: string;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
}

const goes = { ArrowUp: 'up', ArrowDown: 'down', Home: 'first', End: 'last' } as const;

const plainKeys: Readonly<Record<string, KeyMeaning>> = {
  Enter: { kind: 'edit' },
  F2: { kind: 'inPlace' },
  Insert: { kind: 'add' },
  n: { kind: 'add' },
  d: { kind: 'command', command: 'duplicate' },
  x: { kind: 'command', command: 'exclude' },
  Delete: { kind: 'command', command: 'delete' },
  ' ': { kind: 'pick' },
  Escape: { kind: 'letGo' },
};

/**
 * The meaning of a key press; null for a key that the ledger leaves to the page. As in every list, the arrows pick the
 * row they come to, with Shift all on the way, with Ctrl or Cmd none.
 */
export function meaningOf({ key, altKey, ctrlKey, metaKey, shiftKey }: KeyPress): KeyMeaning | null {
  if (altKey && !ctrlKey && !metaKey) {
    if (key === 'ArrowUp') return { kind: 'command', command: 'up' };
    return key === 'ArrowDown' ? { kind: 'command', command: 'down' } : null;
  }
  if (altKey) return null;
  if (Object.hasOwn(goes, key)) {
    const picks = shiftKey ? 'range' : ctrlKey || metaKey ? 'keep' : 'one';
    return { kind: 'go', to: goes[key as keyof typeof goes], picks };
  }
  if (ctrlKey || metaKey) return key === ' ' ? { kind: 'pick' } : null;
  return Object.hasOwn(plainKeys, key) ? (plainKeys[key] ?? null) : null;
}
