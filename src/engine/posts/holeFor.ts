import { augerFor, holeDepth, holeDiameter, holeRule } from '../../trade/footings.ts';
import { gatePostFor } from '../../trade/gatePosts.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Post } from '../post.ts';

/** What the size of a hole follows from, in inches; `leaf` is the widest leaf the post carries. */
export interface HoleDemand {
  readonly od: Inches;
  readonly fabricHeight: Inches;
  readonly leaf: Inches | null;
}

/**
 * The hole for a post, inches: by the rule of ASTM F567 for its outside diameter and the height of
 * the fabric, rounded up to an auger; a gate post takes the footing of the handbook's table where
 * that is larger. A leaf wider than the table reaches gets the rule alone.
 */
export const holeFor = ({ od, fabricHeight, leaf }: HoleDemand): Post['hole'] => {
  const diameter = augerFor(holeDiameter(od));
  const depth = holeDepth(fabricHeight);
  const row = leaf === null ? null : gatePostFor(leaf);
  if (row === null || (row.footingDiameter <= diameter && row.footingDepth <= depth)) {
    return { diameter, depth, source: holeRule.text };
  }
  return {
    diameter: inches(Math.max(diameter, row.footingDiameter)),
    depth: inches(Math.max(depth, row.footingDepth)),
    source: row.source.text,
  };
};
