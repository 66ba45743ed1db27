import type { PaperPoint, SitePoint } from '../geometry/point.ts';

/** From ground to paper: the ground point that lies at the paper's origin, and the scale. */
export interface Projection {
  readonly origin: SitePoint;
  /** Paper inches for an inch of ground: 1/240 at 1 in = 20 ft. */
  readonly scale: number;
}

/** A point of the ground on the paper: inches from the paper's origin, y down. */
export const toPaper = ({ origin, scale }: Projection, at: SitePoint): PaperPoint => ({
  x: (at.x - origin.x) * scale,
  y: (origin.y - at.y) * scale,
});
