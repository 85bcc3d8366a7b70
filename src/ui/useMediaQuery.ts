import { useSyncExternalStore } from 'react';

/** Whether a media query holds; false where there is no window to ask. */
export function useMediaQuery(query: string): boolean {
  return useSyncExternalStore(
    (onChange) => {
      const list = mediaQueryList(query);
      list?.addEventListener('change', onChange);
      return () => {
        list?.removeEventListener('change', onChange);
      };
    },
    () => mediaQueryList(query)?.matches ?? false,
  );
}

/** The DOM of the view tests has no `matchMedia`. */
function mediaQueryList(query: string): MediaQueryList | null {
  return typeof window.matchMedia === 'function' ? window.matchMedia(query) : null;
}
