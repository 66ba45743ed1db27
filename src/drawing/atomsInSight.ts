import { boundsOverlap, expandBounds, type Bounds } from '../geometry/bounds.ts';
import type { Atom } from './atom.ts';
import { inkedBounds, outlineBounds } from './inkedBounds.ts';
import type { Outline, Step } from './outline.ts';

/** Half of the widest pen, and a hair; paper inches. */
const room = 0.05;

/** The paths of an outline one by one: each begins with a move. */
const pathsOf = (outline: Outline): Step[][] => {
  const paths: Step[][] = [];
  for (const step of outline) {
    const last = paths.at(-1);
    if (last === undefined || step.go === 'move') paths.push([step]);
    else last.push(step);
  }
  return paths;
};

const holds = (all: Bounds, { minX, minY, maxX, maxY }: Bounds): boolean =>
  minX >= all.minX && minY >= all.minY && maxX <= all.maxX && maxY <= all.maxY;

/**
 * Atoms without those that lie wholly outside of a clip (paper inches) with all their ink, and of strokes without
 * such paths: what is left looks the same there, since dashes begin anew with each path.
 */
export const atomsInSight = (atoms: readonly Atom[], clip: Bounds): readonly Atom[] => {
  const near = expandBounds(clip, room);
  const isIn = (around: Bounds | null): boolean => around !== null && boundsOverlap(around, near);
  return atoms.flatMap((atom): readonly Atom[] => {
    const around = inkedBounds([atom]);
    if (around === null || !boundsOverlap(around, near)) return [];
    if (atom.do !== 'stroke' || holds(near, around)) return [atom];
    const paths = pathsOf(atom.outline);
    if (paths.length < 2) return [atom];
    const seen = paths.filter((outline) => isIn(outlineBounds(outline)));
    return seen.length === paths.length ? [atom] : [{ ...atom, outline: seen.flat() }];
  });
};
