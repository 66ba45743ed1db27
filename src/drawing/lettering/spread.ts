/** Something that lies on a line, by its middle and its width. */
export interface Spreadable {
  readonly middle: number;
  readonly width: number;
}

interface Cluster {
  readonly widths: readonly number[];
  /** Sum of where its first member would lie if each member had its wish. */
  readonly wishes: number;
}

const startOf = ({ wishes, widths }: Cluster): number => wishes / widths.length;
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** A cluster after another that it runs into: its wishes moved back by the width before them. */
const joined = (before: Cluster, after: Cluster): Cluster => ({
  widths: [...before.widths, ...after.widths],
  wishes: before.wishes + after.wishes - after.widths.length * sum(before.widths),
});

/**
 * Middles for things in the order given so that none overlaps the one before it, as near to their
 * own middles as can be, by least squares. Any one unit of length.
 */
export const spread = (things: readonly Spreadable[]): readonly number[] => {
  const clusters: Cluster[] = [];
  for (const { middle, width } of things) {
    let cluster: Cluster = { widths: [width], wishes: middle - width / 2 };
    for (let before = clusters.at(-1); before !== undefined; before = clusters.at(-1)) {
      if (startOf(before) + sum(before.widths) <= startOf(cluster)) break;
      clusters.pop();
      cluster = joined(before, cluster);
    }
    clusters.push(cluster);
  }
  return clusters.flatMap((cluster) => {
    let at = startOf(cluster);
    return cluster.widths.map((width) => {
      at += width;
      return at - width / 2;
    });
  });
};
