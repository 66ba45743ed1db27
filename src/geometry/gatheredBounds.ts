import { unionOfBounds, type Bounds } from './bounds.ts';

const areaOf = ({ minX, minY, maxX, maxY }: Bounds): number => (maxX - minX) * (maxY - minY);

/**
 * A few bounds that hold each of some between them: two are made one where that takes in no more than `waste` besides
 * (square units), and beyond `most` all of them are.
 */
export const gatheredBounds = (
  all: readonly Bounds[],
  { waste, most }: { readonly waste: number; readonly most: number },
): readonly Bounds[] => {
  const gathered: Bounds[] = [];
  const rest = [...all];
  for (let next = rest.pop(); next !== undefined; next = rest.pop()) {
    const own = next;
    const near = gathered.findIndex(
      (other) => areaOf(unionOfBounds(own, other)) <= areaOf(own) + areaOf(other) + waste,
    );
    const [other] = near < 0 ? [] : gathered.splice(near, 1);
    // one that has grown may be near others now
    if (other === undefined) gathered.push(own);
    else rest.push(unionOfBounds(own, other));
  }
  const [first, ...others] = gathered;
  return first === undefined || gathered.length <= most
    ? gathered
    : [others.reduce(unionOfBounds, first)];
};
