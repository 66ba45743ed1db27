/** A vector in the unit of its space. */
interface Vector {
  readonly x: number;
  readonly y: number;
}

/** One cubic curve of an arc: its ends from the centre, its handles from its ends. */
export interface ArcCurve {
  readonly from: Vector;
  readonly leaving: Vector;
  readonly arriving: Vector;
  readonly to: Vector;
}

const quarter = Math.PI / 2;

const vector = (angle: number, length: number): Vector => ({
  x: length * Math.cos(angle),
  y: length * Math.sin(angle),
});

/**
 * The cubic curves of an arc wherever its centre is: equal ones of at most 90 degrees, each beginning where the
 * last ends; none for a sweep of 0. Angles in radians from the x axis towards the y axis. The curve leaves the
 * circle outwards only, by at most 2.73e-4 of the radius (the error of a quarter; it falls with the sixth power of
 * the piece): on a leaf of 12 ft drawn at 1 in = 4 ft that is under 0.001 in of paper.
 */
export const arcShape = (radius: number, start: number, sweep: number): readonly ArcCurve[] => {
  // the small number keeps rounding from cutting whole quarters once more
  const count = Math.ceil(Math.abs(sweep) / quarter - 1e-9);
  const step = sweep / count;
  const reach = (4 / 3) * Math.tan(step / 4) * radius;
  return Array.from({ length: count }, (_, n) => {
    const [first, last] = [start + n * step, start + (n + 1) * step];
    return {
      from: vector(first, radius),
      leaving: vector(first + quarter, reach),
      arriving: vector(last - quarter, reach),
      to: vector(last, radius),
    };
  });
};
