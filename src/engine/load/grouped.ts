/** Things with the same key together, in the order in which the first of each came. */
export const grouped = <T>(things: readonly T[], key: (thing: T) => string): readonly T[][] => {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const own = key(thing);
    const known = groups.get(own);
    if (known === undefined) groups.set(own, [thing]);
    else known.push(thing);
  }
  return [...groups.values()];
};
