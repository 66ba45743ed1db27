import type { AsSet } from '../../../site/asSet.ts';
import type { LeafId } from '../../../site/ids.ts';
import { oneWidth } from '../../../site/oneWidth.ts';
import type { Inches } from '../../../units/inches.ts';
import { sizeFault } from './sizeFault.ts';
import { phrase } from '../../../phrases/phrase.ts';

const without = <Value>(map: Readonly<Record<LeafId, Value>>, id: LeafId) =>
  Object.fromEntries(Object.entries(map).filter(([key]) => key !== id)) as typeof map;

/** What of a leaf can be measured again beside the posts. */
export type Found = 'top' | 'bottom' | 'hinges';

/**
 * A set record with a leaf's width at the top or bottom, or what its hinges take (inches), measured
 * again; null takes it out, and the whole width where it is the one at the top. Or the end of the
 * line that says why not.
 */
export const withLeaf = (
  asSet: AsSet,
  id: LeafId,
  [what, size]: readonly [Found, Inches | null],
): AsSet | string => {
  const wrong =
    size === null ? null : sizeFault(size, what === 'hinges' ? '0 or more' : 'more than 0');
  if (wrong !== null) return wrong;
  if (what === 'hinges') {
    const hinges = size === null ? without(asSet.hinges, id) : { ...asSet.hinges, [id]: size };
    return { ...asSet, hinges };
  }
  const before = asSet.leaves[id];
  if (what === 'bottom') {
    if (before === undefined)
      return size === null ? asSet : phrase`expected the width at the top first`;
    return { ...asSet, leaves: { ...asSet.leaves, [id]: { ...before, bottom: size } } };
  }
  if (size === null) return { ...asSet, leaves: without(asSet.leaves, id) };
  const widths = { ...oneWidth(size), bottom: before?.bottom ?? null };
  return { ...asSet, leaves: { ...asSet.leaves, [id]: widths } };
};
