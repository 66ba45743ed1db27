/** What follows from a thing that never changes, worked out once for each and kept as long as that is. */
export const remembered = <Whole extends object, T>(
  work: (whole: Whole) => T,
): ((whole: Whole) => T) => {
  const known = new WeakMap<Whole, { readonly value: T }>();
  return (whole) => {
    const found = known.get(whole);
    if (found !== undefined) return found.value;
    const value = work(whole);
    known.set(whole, { value });
    return value;
  };
};
