import { useCallback, useSyncExternalStore } from 'react';

/** Whether a media query holds; false where there is no window to ask. */
export function useMediaQuery(query: string): boolean {
  // The same function while the query stays, so that a drawing does not listen anew.
  const listen = useCallback(
    (onChange: () => void) => {
      const list = mediaQueryList(query);
      list?.addEventListener('change', onChange);
      return () => {
        list?.removeEventListener('change', onChange);
      };
    },
    [query],
  );
  return useSyncExternalStore(listen, () => mediaQueryList(query)?.matches ?? false);
}

const lists = new Map<string, MediaQueryList>();

/** Asked at every drawing, so that each list is made once. The DOM of the view tests has no `matchMedia`. */
function mediaQueryList(query: string): MediaQueryList | null {
  if (typeof window.matchMedia !== 'function') return null;
  const list = lists.get(query) ?? window.matchMedia(query);
  lists.set(query, list);
  return list;
}
