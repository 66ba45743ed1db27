import { alike } from '../engine/carry/alike.ts';
import { expandBounds, type Bounds } from '../geometry/bounds.ts';
import type { Atom } from './atom.ts';
import { inkedBounds } from './inkedBounds.ts';

/** Half of the widest pen or halo, and a hair; paper inches. */
const overInk = 0.06;

/** What tells most atoms apart: where they begin. */
const placeOf = (atom: Atom): number => {
  const first = atom.do === 'text' ? atom.at : atom.outline[0];
  return first === undefined || !('x' in first) ? 0 : first.x * 4096 + first.y;
};

/** The places of atoms in their list, by where they begin. */
const byPlace = (atoms: readonly Atom[]): ReadonlyMap<number, readonly number[]> => {
  const found = new Map<number, number[]>();
  atoms.forEach((atom, n) => {
    const place = placeOf(atom);
    const there = found.get(place);
    if (there === undefined) found.set(place, [n]);
    else there.push(n);
  });
  return found;
};

/** The atoms of two lists that are not in both in the same order. */
const differing = (before: readonly Atom[], now: readonly Atom[]): Atom[] => {
  const different: Atom[] = [];
  let places: ReturnType<typeof byPlace> | null = null;
  let next = 0;
  for (const atom of now) {
    if (next < before.length && alike(before[next], atom)) {
      next += 1;
      continue;
    }
    places ??= byPlace(before);
    const later = (n: number): boolean => n > next && alike(before[n], atom);
    const at = places.get(placeOf(atom))?.find(later);
    if (at === undefined) different.push(atom);
    else {
      different.push(...before.slice(next, at));
      next = at + 1;
    }
  }
  return [...different, ...before.slice(next)];
};

/**
 * Where a drawing may look different from another: paper inches, pens and halos included. Outside of it both are
 * painted by atoms that are alike, in the same order. Null where they are all alike.
 */
export const differingBounds = (before: readonly Atom[], now: readonly Atom[]): Bounds | null => {
  if (before === now) return null;
  const around = inkedBounds(differing(before, now));
  return around === null ? null : expandBounds(around, overInk);
};
