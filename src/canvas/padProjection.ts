import type { Projection } from '../drawing/projection.ts';
import type { View } from '../store/view.ts';

/**
 * The paper that the pad is, for a view: its origin is the upper left corner of the screen, and an
 * inch of it is `inch` CSS pixels.
 */
export const padProjection = ({ scale, x, y }: View, inch: number): Projection => ({
  origin: { x: -x / scale, y: y / scale },
  scale: scale / inch,
});
