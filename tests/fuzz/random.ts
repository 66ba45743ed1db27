/** Numbers that a seed gives again, and choices by them. */
export interface Random {
  /** A whole number from 0 to below `end`; 0 for an `end` of 0. */
  readonly below: (end: number) => number;
  readonly chance: (share: number) => boolean;
  /** One of a list that is not empty. */
  readonly pick: <T>(list: readonly T[]) => T;
}

/** Steps of a mixing function over 32 bits (mulberry32 by T. Ettinger, in the public domain; from memory). */
const mixed = (state: number): number => {
  let t = Math.imul(state ^ (state >>> 15), state | 1);
  t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
  return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
};

/** Random numbers of a seed and of the number of an input, so that one input can be made by itself. */
export const random = (seed: number, input: number): Random => {
  let state = Math.imul(seed, 0x9e3779b1) ^ Math.imul(input + 1, 0x85ebca6b);
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    return mixed(state);
  };
  const below = (end: number) => Math.floor(next() * end);
  const pick = <T>(list: readonly T[]): T => {
    const one = list[below(list.length)];
    if (one === undefined && list.length === 0) throw new RangeError('expected a list of some');
    return one as T;
  };
  return { below, chance: (share) => next() < share, pick };
};
