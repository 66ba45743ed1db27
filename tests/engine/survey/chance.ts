/** Numbers that look random and are the same in every run. */
export interface Chance {
  /** From `low` up to `high`. */
  readonly between: (low: number, high: number) => number;
  /** A whole number from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number;
  /** True in so many of a hundred. */
  readonly percent: (of: number) => boolean;
  /** A normal deviate of mean 0 and standard deviation 1 (Box and Muller 1958). */
  readonly normal: () => number;
  readonly pick: <T>(from: readonly T[]) => T;
}

/** Chance by a seed: a counter of 32 bits, mixed by multiplying and shifting. */
export const chanceOf = (seed: number): Chance => {
  let state = Math.imul(seed + 1, 0x9e3779b1);
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 2 ** 32;
  };
  const between = (low: number, high: number): number => low + (high - low) * next();
  const whole = (low: number, high: number): number => Math.floor(between(low, high + 1));
  return {
    between,
    whole,
    percent: (of) => next() * 100 < of,
    normal: () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next()),
    pick: (from) => {
      const one = from[whole(0, from.length - 1)];
      if (one === undefined) throw new RangeError('nothing to pick from');
      return one;
    },
  };
};
