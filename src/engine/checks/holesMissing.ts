import { distance } from '../../geometry/distance.ts';
import type { Post } from '../post.ts';

/** How much more room two holes need, inches; nothing for two posts of one gate: its opening rules. */
export const holesMissing = (a: Post, b: Post): number =>
  a.gates.some((gate) => b.gates.includes(gate))
    ? 0
    : (a.hole.diameter + b.hole.diameter) / 2 - distance(a.at, b.at);
