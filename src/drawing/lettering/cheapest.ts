/** Sums of costs differ by less, whichever way they are added up. */
const hair = 1e-6;

/**
 * The best of a list of places that begins with the most wished for: the one with the least cost,
 * where each step down the list costs 1 more. `costOf` gives what else is wrong with a place, zero
 * or more, or null where it cannot be had; a place with more than `limit` wrong is lost, by how much does
 * not matter. Null where no place can.
 */
export const cheapest = <Place>(
  places: Iterable<Place>,
  costOf: (place: Place, limit: number) => number | null,
): Place | null => {
  let best: { readonly place: Place; readonly cost: number } | null = null;
  let wish = 0;
  for (const place of places) {
    if (best !== null && wish >= best.cost) break;
    const wrong = costOf(place, best === null ? Infinity : best.cost - wish + hair);
    if (wrong !== null && (best === null || wish + wrong < best.cost))
      best = { place, cost: wish + wrong };
    wish += 1;
  }
  return best?.place ?? null;
};
