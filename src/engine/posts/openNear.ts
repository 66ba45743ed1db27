import type { Closed } from './spaceOut.ts';

/**
 * The nearest place to a station where a post may stand, the lower of two as near; inches. Null
 * where all ground within `reach` of it is closed.
 */
export const openNear = (at: number, reach: number, closed: readonly Closed[]): number | null => {
  const isOpen = (place: number) => closed.every(({ from, to }) => place <= from || place >= to);
  const [nearest] = [at, ...closed.flatMap(({ from, to }) => [from, to])]
    .filter((place) => Math.abs(place - at) <= reach && isOpen(place))
    .toSorted((a, b) => Math.abs(a - at) - Math.abs(b - at) || a - b);
  return nearest ?? null;
};
