import type { Part, Parts } from './part.ts';

const remembered = new WeakMap<Parts, ReadonlyMap<string, readonly Part[]>>();

/** The corners of lines and features and the leaves of gates, by the keys of what they are parts of. */
export const innerParts = (parts: Parts): ReadonlyMap<string, readonly Part[]> => {
  const known = remembered.get(parts);
  if (known !== undefined) return known;
  const inner = new Map<string, Part[]>();
  for (const part of parts.values()) {
    if (part.owner === '') continue;
    const row = inner.get(part.owner);
    if (row === undefined) inner.set(part.owner, [part]);
    else row.push(part);
  }
  remembered.set(parts, inner);
  return inner;
};
