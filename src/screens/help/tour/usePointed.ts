import { useEffect } from 'react';
import type { TourPoint } from './pointsAt.ts';

const placeOf = (point: TourPoint): HTMLElement | null =>
  document.querySelector<HTMLElement>(`[data-point='${point}']`);

/** What of the page may have made a place appear or go, besides the stores. */
const changes = ['click', 'keyup', 'resize'] as const;

/**
 * Outlines the first of some places that is to be seen: the page is told which, and its style does the
 * rest. A place that has scrolled out of a row of tools is brought back into it. No focus is moved.
 */
export const usePointed = (points: readonly TourPoint[]): void => {
  const key = points.join(',');
  useEffect(() => {
    const root = document.documentElement;
    let shown: TourPoint | null = null;
    const show = () => {
      const own = key === '' ? [] : (key.split(',') as TourPoint[]);
      const found = own.find((point) => placeOf(point)?.checkVisibility() === true) ?? null;
      if (found === shown) return;
      shown = found;
      if (found === null) delete root.dataset['pointed'];
      else root.dataset['pointed'] = found;
      if (found !== null) placeOf(found)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    };
    // after the screen is drawn again
    const soon = () => requestAnimationFrame(show);
    show();
    soon();
    for (const change of changes) window.addEventListener(change, soon);
    return () => {
      for (const change of changes) window.removeEventListener(change, soon);
      delete root.dataset['pointed'];
    };
  }, [key]);
};
