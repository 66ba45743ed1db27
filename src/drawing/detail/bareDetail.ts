import type { Bounds } from '../../geometry/bounds.ts';
import type { Meeting } from '../../engine/sweep/meetings.ts';
import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import type { DetailPart } from './detailPart.ts';
import { gateElevation } from './gateElevation.ts';
import { gatePlan } from './gatePlan.ts';
import type { GateSight } from './gateSight.ts';

/** Both pictures of a gate before their texts have places, and the room that they take at least; paper inches. */
export interface BareDetail {
  readonly upper: DetailPart;
  readonly lower: DetailPart;
  readonly width: number;
  readonly height: number;
}

/** The upright rectangle round the points of straight lines and the first of rounds: no more than all takes up. */
const leastBounds = (atoms: readonly Atom[]): Bounds | null => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const atom of atoms) {
    if (atom.do === 'text') continue;
    for (const step of atom.outline) {
      if (step.go === 'close' || step.go === 'arc') continue;
      minX = Math.min(minX, step.x);
      minY = Math.min(minY, step.y);
      maxX = Math.max(maxX, step.x);
      maxY = Math.max(maxY, step.y);
    }
  }
  return minX > maxX ? null : { minX, minY, maxX, maxY };
};

/** What is broken for a text ends no farther from where it was than this, the text beside it; paper inches. */
const given = 0.1;

const spanOf = (from: number, to: number): number => Math.max(0, to - from - 2 * given);

const highOf = (bounds: Bounds): number => spanOf(bounds.minY, bounds.maxY);

/**
 * The elevation of a gate and its plan at a scale (ground inches to one of the paper), drawn and not lettered: whether
 * they may have room somewhere is known before a text is placed. `stop` is what a leaf meets before it is open; null
 * for nothing.
 */
export const bareDetail = (
  sight: GateSight,
  site: Site,
  ratio: number,
  stop: Meeting | null,
): BareDetail => {
  const [upper, lower] = [
    gateElevation(sight, site, ratio),
    gatePlan(sight, site, ratio, stop),
  ] as const;
  const [over, under] = [leastBounds(upper.atoms), leastBounds(lower.atoms)];
  if (over === null || under === null) return { upper, lower, width: 0, height: 0 };
  const width = spanOf(Math.min(over.minX, under.minX), Math.max(over.maxX, under.maxX));
  return { upper, lower, width, height: highOf(over) + highOf(under) };
};
