import type { Inches } from '../../units/inches.ts';

/** What a round pipe is as a beam: area in², moment of inertia in⁴, elastic and plastic modulus in³. */
export interface PipeSection {
  readonly area: number;
  readonly inertia: number;
  readonly elastic: number;
  readonly plastic: number;
}

/**
 * The section of a round pipe by its actual outside diameter and wall, inches. A wall of half of the
 * diameter is a solid bar. Throws a RangeError for a wall that no pipe can have.
 */
export const pipeSection = ({
  od,
  wall,
}: {
  readonly od: Inches;
  readonly wall: Inches;
}): PipeSection => {
  if (!(od > 0 && wall > 0 && wall <= od / 2)) {
    throw new RangeError(`wall ${wall} of a pipe of ${od} in: expected above 0, at most ${od / 2}`);
  }
  const bore = od - 2 * wall;
  const inertia = (Math.PI / 64) * (od ** 4 - bore ** 4);
  return {
    area: (Math.PI / 4) * (od ** 2 - bore ** 2),
    inertia,
    elastic: (2 * inertia) / od,
    plastic: (od ** 3 - bore ** 3) / 6,
  };
};
