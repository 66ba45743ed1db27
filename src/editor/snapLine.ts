import { add } from '../geometry/add.ts';
import { dot } from '../geometry/dot.ts';
import { scale } from '../geometry/scale.ts';
import { subtract } from '../geometry/subtract.ts';
import type { SitePoint } from '../geometry/point.ts';

/** The sorts of line that a point is drawn onto, the strongest first. */
export const lineKinds = ['square', 'parallel', 'extension', 'compass'] as const;

/** An endless line that a point can be drawn onto: where it starts, a vector of length 1. */
export interface SnapLine {
  readonly kind: (typeof lineKinds)[number];
  readonly origin: SitePoint;
  readonly way: SitePoint;
  /** What the hand is told, such as `square to the last leg`. */
  readonly label: string;
}

/** The foot of a point on a line, in inches on the ground. */
export const onLine = ({ origin, way }: SnapLine, at: SitePoint): SitePoint =>
  add(origin, scale(way, dot(subtract(at, origin), way)));
