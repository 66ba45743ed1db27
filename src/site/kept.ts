/**
 * `fresh`, made of as many parts of `old` as say the same: `old` itself when all of it does. So an
 * edit shares structure with the document that it started from. For plain JSON values.
 */
export const kept = <T>(old: unknown, fresh: T): T => {
  if (Object.is(old, fresh)) return fresh;
  if (typeof old !== 'object' || old === null || typeof fresh !== 'object' || fresh === null) {
    return fresh;
  }
  const before = old as Readonly<Record<string, unknown>>;
  const entries = (Object.entries(fresh) as [string, unknown][]).map(
    ([key, value]) => [key, kept(before[key], value)] as const,
  );
  const same =
    entries.length === Object.keys(before).length &&
    entries.every(([key, value]) => Object.hasOwn(before, key) && before[key] === value);
  if (same && Array.isArray(old) === Array.isArray(fresh)) return old as T;
  if (Array.isArray(fresh)) return entries.map(([, value]) => value) as T;
  return Object.fromEntries(entries) as T;
};
