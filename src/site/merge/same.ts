/** Whether two plain JSON values say the same, in whatever order their fields are; undefined is nothing. */
export const same = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [one, other] = [a, b] as readonly Readonly<Record<string, unknown>>[];
  if (one === undefined || other === undefined) return false;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => Object.hasOwn(other, name) && same(one[name], other[name]))
  );
};
