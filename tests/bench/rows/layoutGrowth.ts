import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { quantile } from '../measured.ts';
import type { Figure, Pace, Row } from '../row.ts';
import { yardOf } from '../yardOf.ts';

/** A yard's posts as counted, and the milliseconds that its layout from nothing takes. */
interface Cost {
  readonly posts: number;
  readonly took: number;
}

/** How long a size is gone on with, milliseconds, and the fewest layouts that count. */
const [enough, fewest] = [300, 3];

const costAt = (size: number): Cost => {
  const site = yardOf(size);
  const posts = layOutSite(site).posts.size;
  const took: number[] = [];
  const begun = performance.now();
  while (took.length < fewest || performance.now() - begun < enough) {
    const before = performance.now();
    layOutSite(site);
    took.push(performance.now() - before);
  }
  return { posts, took: quantile(took, 0.5) };
};

/** The power of the number of posts that costs grow by: the slope of their logarithms by least squares. */
const exponentOf = (costs: readonly Cost[]): number => {
  const points = costs.map(({ posts, took }) => [Math.log(posts), Math.log(took)] as const);
  const mean = (n: 0 | 1): number =>
    points.reduce((sum, point) => sum + point[n], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const over = points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0);
  return over / points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
};

const large = ({ posts }: Cost): boolean => posts > 500;

const grown = ({ quick }: Pace): Figure => {
  const sizes = quick ? [100, 1000, 20_000] : [100, 1000, 10_000, 100_000];
  // the code is warm before the smallest counts
  costAt(1000);
  const rising = sizes.map(costAt);
  const falling = sizes.toReversed().map(costAt).toReversed();
  const costs = rising.map(({ posts, took }, n) => ({
    posts,
    took: (took + (falling[n]?.took ?? took)) / 2,
  }));
  const each = costs.map(({ posts, took }) => `${posts} posts ${took.toPrecision(3)} ms`);
  return {
    ratio: exponentOf(costs.filter(large)),
    orders: [exponentOf(rising.filter(large)), exponentOf(falling.filter(large))],
    ours: null,
    theirs: null,
    note: `${each.join(', ')}; from the smallest ${exponentOf(costs).toFixed(2)}`,
  };
};

/** How the cost of a layout grows with its posts: the figure is the exponent, once by rising and once by falling size. */
export const layoutGrowth: Row = {
  work: 'layout growth, 1,000 to 100,000 posts',
  against: 'linear: the exponent',
  bar: 1.1,
  run: (pace) => Promise.resolve(grown(pace)),
};
