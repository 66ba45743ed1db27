import { slack } from '../../geometry/tolerance.ts';

/** A stretch and the places in it where a pull post could stand, rising; inches from its start. */
export interface PullStretch {
  readonly length: number;
  readonly places: readonly number[];
}

const within = (places: readonly number[], length: number, interval: number): boolean =>
  [...places, length].every((at, n) => at - (places[n - 1] ?? 0) <= interval + slack);

const nearest = (places: readonly number[], to: number): number | undefined =>
  places.reduce<number | undefined>(
    (best, at) => (best === undefined || Math.abs(at - to) < Math.abs(best - to) ? at : best),
    undefined,
  );

/** From one pull to the next as far as the interval reaches, or to the first place past it. */
const asFarAs = ({ length, places }: PullStretch, interval: number): number[] => {
  const pulls: number[] = [];
  for (let at = 0; length - at > interval + slack;) {
    const from = at;
    const ahead = places.filter((place) => place > from + slack);
    const next = ahead.findLast((place) => place <= from + interval + slack) ?? ahead[0];
    if (next === undefined) return pulls;
    pulls.push(next);
    at = next;
  }
  return pulls;
};

/**
 * Where pull posts stand in a stretch so that none of its pieces is over `interval` (inches): as few
 * as can be and nearest to even pieces where that keeps the interval, else as far apart as it
 * allows. Where no place is in reach the next one past it is taken, and a piece is over.
 */
export const pullsAmong = (stretch: PullStretch, interval: number): readonly number[] => {
  const { length, places } = stretch;
  const far = asFarAs(stretch, interval);
  const even = far.flatMap((_, n) => nearest(places, (length * (n + 1)) / (far.length + 1)) ?? []);
  const apart = new Set(even).size === far.length;
  return apart && within(even, length, interval) ? even : far;
};
