import { bench, describe } from 'vitest';
import { equalBays } from '../../../src/engine/posts/equalBays.ts';
import { spaceOut } from '../../../src/engine/posts/spaceOut.ts';
import { inches } from '../../../src/units/inches.ts';
import { modelledBay, type Stretch } from './spacingModel.ts';

/** A yard's worth of stretches, each with some closed ground; the same ones in every run. */
const stretches: readonly Stretch[] = Array.from({ length: 20 }, (_, n) => ({
  length: 480 + 37 * n,
  max: 120,
  closed: Array.from({ length: 1 + (n % 4) }, (_o, k) => ({
    from: 90 + 150 * k + 7 * n,
    to: 90 + 150 * k + 7 * n + 46,
  })).filter(({ to }) => to < 470 + 37 * n),
}));

const solved = stretches.map(({ length, max, closed }) =>
  spaceOut(inches(length), inches(max), closed),
);

describe('line posts of 20 stretches with closed ground', () => {
  bench('by the cheapest way over the ends of closed ground', () => {
    for (const { length, max, closed } of stretches) spaceOut(inches(length), inches(max), closed);
  });

  bench('by the mixed-integer model', () => {
    stretches.forEach((stretch, n) => {
      modelledBay(stretch, solved[n]?.stations.length ?? 0);
    });
  });
});

describe('line posts of a mile', () => {
  const mile = inches(63_360);
  const crossed = Array.from({ length: 40 }, (_, n) => ({
    from: 1500 * n + 97,
    to: 1500 * n + 143,
  }));

  bench('with nothing in the way', () => {
    equalBays(mile, inches(120));
  });

  bench('with 40 services across', () => {
    spaceOut(mile, inches(120), crossed);
  });
});
