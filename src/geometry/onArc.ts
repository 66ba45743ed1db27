import { radians, type Radians } from '../units/radians.ts';
import type { Arc } from './arcToBeziers.ts';
import { moved } from './moved.ts';
import type { Point } from './point.ts';
import { principalAngle } from './principalAngle.ts';

const turn = 2 * Math.PI;

/** The length of an arc along it, in the unit of the space. */
export const arcLength = ({ radius, sweep }: Arc<string>): number => radius * Math.abs(sweep);

/** The point of an arc at a length along it; beyond its ends the circle goes on. */
export const onArc = <Space extends string>(arc: Arc<Space>, along: number): Point<Space> => {
  const { centre, radius, start, sweep } = arc;
  return moved(centre, radians(start + (Math.sign(sweep) * along) / radius), radius);
};

/** The direction in which an arc runs at a length along it, from the x axis towards the y axis. */
export const arcBearing = ({ radius, start, sweep }: Arc<string>, along: number): Radians => {
  const way = Math.sign(sweep);
  return principalAngle(start + way * (along / radius + Math.PI / 2));
};

/**
 * How far along an arc the point of it is that is nearest to another, in the unit of the space; one of
 * its ends for what lies nearest to them, and its start for its centre.
 */
export const alongArc = <Space extends string>(
  arc: Arc<Space>,
  { x, y }: Point<NoInfer<Space>>,
): number => {
  const { centre, radius, start, sweep } = arc;
  if (x === centre.x && y === centre.y) return 0;
  const ahead = Math.sign(sweep) * (Math.atan2(y - centre.y, x - centre.x) - start);
  const angle = ahead - turn * Math.floor(ahead / turn);
  const whole = Math.abs(sweep);
  if (angle <= whole) return angle * radius;
  return angle - whole < turn - angle ? whole * radius : 0;
};
