import type { Atom } from '../atom.ts';
import { moveAtoms } from '../moveAtoms.ts';
import { atomBounds } from './atomBounds.ts';
import type { BareDetail } from './bareDetail.ts';
import { letterDetail } from './letterDetail.ts';

/** Both pictures of a gate from their own upper left corner, and the room they take; paper inches. */
export interface GateDetail {
  readonly atoms: readonly Atom[];
  readonly width: number;
  readonly height: number;
  /** What found no place in them. */
  readonly left: readonly string[];
}

/** Between the two pictures, paper inches. */
const between = 0.14;

/**
 * The elevation of a gate with its plan under it, aligned, as they were drawn at a scale: with their texts where
 * these are clear.
 */
export const gateDetail = (bare: BareDetail): GateDetail => {
  const [upper, lower] = [letterDetail(bare.upper), letterDetail(bare.lower)];
  const [over, under] = [atomBounds(upper.atoms), atomBounds(lower.atoms)];
  if (over === null || under === null) return { atoms: [], width: 0, height: 0, left: [] };
  const x = Math.min(over.minX, under.minX);
  const split = over.maxY - over.minY + between;
  return {
    atoms: [
      ...moveAtoms(upper.atoms, -x, -over.minY),
      ...moveAtoms(lower.atoms, -x, split - under.minY),
    ],
    width: Math.max(over.maxX, under.maxX) - x,
    height: split + under.maxY - under.minY,
    left: [...upper.left, ...lower.left],
  };
};
