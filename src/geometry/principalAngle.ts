import { radians } from '../units/radians.ts';
import type { Radians } from '../units/radians.ts';

const round = 2 * Math.PI;

/** The same direction as an angle above -π and at most π. */
export const principalAngle = (angle: number): Radians => {
  const turned = angle - round * Math.round(angle / round);
  return radians(turned <= -Math.PI ? Math.PI : turned);
};
