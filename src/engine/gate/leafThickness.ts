import type { Leaf } from '../../site/gate.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { frameFor } from '../../trade/gateFrames.ts';
import type { Inches } from '../../units/inches.ts';

/** How thick a leaf is, inches: the outside diameter of its frame, said or usual for its size. */
export const leafThickness = (leaf: Pick<Leaf, 'frame' | 'widths' | 'height'>): Inches =>
  leaf.frame?.od ?? frameFor(leafWidth(leaf), leaf.height).od;
