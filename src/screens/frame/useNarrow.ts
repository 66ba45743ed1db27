import { useSyncExternalStore } from 'react';

/** As wide as a phone held upright; the same width as in frame.css and yard.css. */
const narrow = '(max-width: 760px)';

const heard = (tell: () => void): (() => void) => {
  const width = window.matchMedia(narrow);
  width.addEventListener('change', tell);
  return () => width.removeEventListener('change', tell);
};

/** Whether the screen is as narrow as a phone held upright; false where there is no screen. */
export const useNarrow = (): boolean =>
  useSyncExternalStore(
    heard,
    () => window.matchMedia(narrow).matches,
    () => false,
  );
