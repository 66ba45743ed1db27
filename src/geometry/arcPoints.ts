import type { Arc } from './arcToBeziers.ts';
import { arcLength, onArc } from './onArc.ts';
import type { Point } from './point.ts';

/**
 * Points of an arc at equal lengths along it, both ends among them, so near to each other that the
 * straight pieces between them lie no farther than `off` inside it, in the unit of the space.
 */
export const arcPoints = <Space extends string>(arc: Arc<Space>, off: number): Point<Space>[] => {
  const step = 2 * Math.acos(Math.max(0, 1 - off / arc.radius));
  const count = Math.max(1, Math.ceil(Math.abs(arc.sweep) / step));
  const length = arcLength(arc);
  return Array.from({ length: count + 1 }, (_, n) => onArc(arc, (n * length) / count));
};
