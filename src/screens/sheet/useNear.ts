import { useLayoutEffect, useState, type RefObject } from 'react';

/** How far outside the part that is seen an element still counts as near: one and a half views. */
const margin = '150% 0%';

/**
 * Whether an element is in the part of the sheet that is seen, or will soon be scrolled into it.
 * Long sets have dozens of pages, and some devices hold only so many pictures at once.
 */
export const useNear = (element: RefObject<HTMLElement | null>): boolean => {
  const [near, setNear] = useState(false);
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return undefined;
    const observer = new IntersectionObserver(
      // several changes can come at once: the last one holds
      (changes) => setNear(changes.at(-1)?.isIntersecting ?? false),
      { root: watched.closest('main'), rootMargin: margin },
    );
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return near;
};
