import type { Bounds } from '../geometry/bounds.ts';
import type { PaperPoint } from '../geometry/point.ts';
import type { Atom } from './atom.ts';
import { textBox } from './lettering/textBox.ts';
import type { Outline } from './outline.ts';

interface Grown {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

/** Takes in what lies around a point, so far to both sides and so far up and down. */
const takeIn = (all: Grown, { x, y }: PaperPoint, across: number, up: number): void => {
  all.minX = Math.min(all.minX, x - across);
  all.minY = Math.min(all.minY, y - up);
  all.maxX = Math.max(all.maxX, x + across);
  all.maxY = Math.max(all.maxY, y + up);
};

const takeOutline = (all: Grown, outline: Outline): void => {
  for (const step of outline) {
    if (step.go === 'close') continue;
    const around = step.go === 'arc' ? step.radius : 0;
    takeIn(all, step, around, around);
  }
};

const takeAtom = (all: Grown, atom: Atom): void => {
  if (atom.do !== 'text') return takeOutline(all, atom.outline);
  const { centre, halfWidth, halfHeight, angle } = textBox(atom);
  const [cos, sin] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))];
  const [across, up] = [halfWidth * cos + halfHeight * sin, halfWidth * sin + halfHeight * cos];
  return takeIn(all, centre, across, up);
};

const nowhere = (): Grown => ({
  minX: Infinity,
  minY: Infinity,
  maxX: -Infinity,
  maxY: -Infinity,
});

/** The same of an outline alone. */
export const outlineBounds = (outline: Outline): Bounds | null => {
  const all = nowhere();
  takeOutline(all, outline);
  return all.minX > all.maxX ? null : all;
};

/**
 * The upright rectangle on the paper (inches, y down) that atoms take up, letters included; of an
 * arc its whole circle, of what is clipped the clip. Null for no atoms.
 */
export const inkedBounds = (atoms: readonly Atom[]): Bounds | null => {
  const all = nowhere();
  for (const atom of atoms) takeAtom(all, atom);
  return all.minX > all.maxX ? null : all;
};
