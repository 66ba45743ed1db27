import { spaceOut } from '../../../src/engine/posts/spaceOut.ts';
import { inches } from '../../../src/units/inches.ts';
import { bayModel, bayOf, type Stretch } from '../../engine/posts/spacingModel.ts';
import { measured } from '../measured.ts';
import type { Figure, Pace, Row } from '../row.ts';

/** A yard's worth of stretches, each with some closed ground; the same ones in every run. */
const stretches: readonly Stretch[] = Array.from({ length: 20 }, (_, n) => ({
  length: 480 + 37 * n,
  max: 120,
  closed: Array.from({ length: 1 + (n % 4) }, (_o, k) => ({
    from: 90 + 150 * k + 7 * n,
    to: 90 + 150 * k + 7 * n + 46,
  })).filter(({ to }) => to < 470 + 37 * n),
}));

const spaced = () =>
  stretches.map(({ length, max, closed }) => spaceOut(inches(length), inches(max), closed));

const largestOf = (stations: readonly number[], length: number): number =>
  [...stations, length].reduce(
    (most, station, n) => Math.max(most, station - (stations[n - 1] ?? 0)),
    0,
  );

const run = ({ quick }: Pace): Figure => {
  const ours = spaced();
  // the model is told how many posts there are, and only has to place them: its text is written before
  const models = stretches.map((stretch, n) => bayModel(stretch, ours[n]?.stations.length ?? 0));
  const alike = models.filter((model, n) => {
    const largest = largestOf(ours[n]?.stations ?? [], stretches[n]?.length ?? 0);
    return Math.abs((bayOf(model) ?? 0) - largest) < 1e-6;
  });
  return measured(spaced, () => models.map(bayOf), {
    rounds: quick ? 2 : 12,
    calls: { ours: 20, theirs: 1 },
    note: `${alike.length} of ${models.length} stretches with the same largest bay`,
  });
};

/** Line posts of stretches with ground where none may stand. */
export const spacing: Row = {
  work: 'post spacing with keep-outs, 20 stretches',
  against: 'HiGHS on the same',
  bar: 0.02,
  run: (pace) => Promise.resolve(run(pace)),
};
