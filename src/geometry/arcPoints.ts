import type { Arc } from './arcToBeziers.ts';
import { arcLength, onArc } from './onArc.ts';
import type { Point } from './point.ts';

/**
 * Points of an arc at equal lengths along it, both ends among them, so near to each other that the
 * straight pieces between them lie no farther than `off` inside it, in the unit of the space.
 */
export const arcPoints = <Space extends string>(arc: Arc<Space>, off: number): Point<Space>[] => {
  // 1 - cos(s/2) is 2 sin²(s/4), which holds where the arc is so flat that 1 - off/R would be 1
  const step = 4 * Math.asin(Math.sqrt(Math.min(off / (2 * arc.radius), 1 / 2)));
  const count = Math.max(1, Math.ceil(Math.abs(arc.sweep) / step));
  const length = arcLength(arc);
  return Array.from({ length: count + 1 }, (_, n) => onArc(arc, (n * length) / count));
};
