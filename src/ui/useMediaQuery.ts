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

/** The DOM of the view tests has no `matchMedia`. */
function mediaQueryList(query: string): MediaQueryList | null {
  return typeof window.matchMedia === 'function' ? window.matchMedia(query) : null;
}
