const entriesAlike = (a: object, b: object): boolean => {
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every(
    (key) => Object.hasOwn(b, key) && alike(a[key as keyof object], b[key as keyof object]),
  );
};

/**
 * Whether two values hold the same: numbers, texts, and plain objects and lists of them to any
 * depth. Zero and minus zero differ, as they do when written out. Functions, maps and sets are alike
 * only when they are one.
 */
export const alike = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const kind: unknown = Object.getPrototypeOf(a);
  if (kind !== Object.getPrototypeOf(b)) return false;
  return (kind === Object.prototype || kind === Array.prototype) && entriesAlike(a, b);
};
