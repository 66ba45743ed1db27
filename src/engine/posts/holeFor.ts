import {
  augerFor,
  holeDepth,
  holeDiameter,
  holeRule,
  squareHoleDiameter,
  squareHoleRule,
} from '../../trade/footings.ts';
import { gatePostFor } from '../../trade/gatePosts.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Post } from '../post.ts';
import { postGirth, type PostGirth } from './postGirth.ts';
import { wallHole } from '../wall/wallHole.ts';

/**
 * What the size of a hole follows from, in inches; `leaf` is the widest leaf the post carries, `wall`
 * what it stands on in place of the ground.
 */
export interface HoleDemand {
  readonly post: PostGirth;
  readonly fabricHeight: Inches;
  readonly leaf: Inches | null;
  readonly wall: WallTop | null;
}

/**
 * The hole for a post, inches: by the rule of ASTM F567 for its outside diameter and the height of
 * the fabric, rounded up to an auger; a gate post takes the footing of the handbook's table where
 * that is larger. A leaf wider than the table reaches gets the rule alone. On a wall it is what the
 * post takes of that.
 */
export const holeFor = ({ post, fabricHeight, leaf, wall }: HoleDemand): Post['hole'] => {
  if (wall !== null) return wallHole(wall, postGirth(post));
  const square = post.section === 'square';
  const diameter = augerFor(square ? squareHoleDiameter(post.od) : holeDiameter(post.od));
  const depth = holeDepth(fabricHeight);
  const row = leaf === null ? null : gatePostFor(leaf);
  if (row === null || (row.footingDiameter <= diameter && row.footingDepth <= depth)) {
    return { diameter, depth, source: (square ? squareHoleRule : holeRule).text };
  }
  return {
    diameter: inches(Math.max(diameter, row.footingDiameter)),
    depth: inches(Math.max(depth, row.footingDepth)),
    source: row.source.text,
  };
};
