import type { Atom } from '../drawing/atom.ts';
import { textBox } from '../drawing/lettering/textBox.ts';
import type { Outline } from '../drawing/outline.ts';
import { boundsOf, unionOfBounds, type Bounds } from '../geometry/bounds.ts';

const ofOutline = (outline: Outline): Bounds | null =>
  boundsOf(
    outline.flatMap((step) => {
      if (step.go === 'close') return [];
      if (step.go !== 'arc') return [{ x: step.x, y: step.y }];
      const { x, y, radius } = step;
      return [
        { x: x - radius, y: y - radius },
        { x: x + radius, y: y + radius },
      ];
    }),
  );

const ofAtom = (atom: Atom): Bounds | null => {
  if (atom.do === 'text') {
    const { centre, halfWidth, halfHeight, angle } = textBox(atom);
    const [cos, sin] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))];
    const across = halfWidth * cos + halfHeight * sin;
    const up = halfWidth * sin + halfHeight * cos;
    const { x, y } = centre;
    return { minX: x - across, minY: y - up, maxX: x + across, maxY: y + up };
  }
  return ofOutline(atom.outline);
};

/**
 * The upright rectangle on the paper (inches, y down) that atoms take up, letters included; of an
 * arc its whole circle, of what is clipped the clip. Null for no atoms.
 */
export const inkedBounds = (atoms: readonly Atom[]): Bounds | null =>
  atoms.reduce<Bounds | null>((all, atom) => {
    const one = ofAtom(atom);
    if (one === null || all === null) return all ?? one;
    return unionOfBounds(all, one);
  }, null);
