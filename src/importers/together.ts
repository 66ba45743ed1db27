type Axis = 'x' | 'y';

/** Points by where an axis has a gap between two neighbours that is wider than `gap`. */
const runs = <P extends Readonly<Record<Axis, number>>>(
  points: readonly P[],
  axis: Axis,
  gap: number,
): P[][] => {
  const all: P[][] = [];
  let [last, run]: [number, P[]] = [-Infinity, []];
  for (const point of points.toSorted((a, b) => a[axis] - b[axis])) {
    if (point[axis] - last > gap) all.push((run = []));
    run.push(point);
    last = point[axis];
  }
  return all;
};

/**
 * The most points that lie together, with no gap wider than `gap` between them to the side or upward;
 * of two places with as many the one farther to the right. Parted to the side, upward and to the side
 * again: what would take more stays together.
 */
export const together = <P extends Readonly<Record<Axis, number>>>(
  points: readonly P[],
  gap: number,
): readonly P[] =>
  (['x', 'y', 'x'] as const)
    .reduce<readonly (readonly P[])[]>(
      (groups, axis) => groups.flatMap((group) => runs(group, axis, gap)),
      [points],
    )
    .reduce((most, one) => (one.length >= most.length ? one : most), []);
