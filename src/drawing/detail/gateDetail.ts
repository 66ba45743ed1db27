import type { Meeting } from '../../engine/sweep/meetings.ts';
import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import { moveAtoms } from '../moveAtoms.ts';
import { atomBounds } from './atomBounds.ts';
import { gateElevation } from './gateElevation.ts';
import { gatePlan } from './gatePlan.ts';
import type { GateSight } from './gateSight.ts';
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
 * The elevation of a gate with its plan under it, aligned, at a scale (ground inches to one of the paper).
 * `stop` is what a leaf meets before it is open; null for nothing.
 */
export const gateDetail = (
  sight: GateSight,
  site: Site,
  ratio: number,
  stop: Meeting | null,
): GateDetail => {
  const upper = letterDetail(gateElevation(sight, site, ratio));
  const lower = letterDetail(gatePlan(sight, site, ratio, stop));
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
