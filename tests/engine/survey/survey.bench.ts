import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { bench, describe } from 'vitest';
import { adjusted } from '../../../src/engine/survey/adjusted.ts';
import { partOf } from '../../../src/engine/survey/bodies.ts';
import { heldAmong } from '../../../src/engine/survey/held.ts';
import { helpfulTape } from '../../../src/engine/survey/helpfulTape.ts';
import { judge } from '../../../src/engine/survey/judged.ts';
import type { Network } from '../../../src/engine/survey/networks.ts';
import { stanceAt, taskOf } from '../../../src/engine/survey/stance.ts';
import { usualTrusts } from '../../../src/site/trusts.ts';
import { bigNetwork } from './bigNetwork.ts';

/** A network where its marks stand. */
const standing = (network: Network): Network => {
  const { places } = adjusted(network);
  const spots = [...network.spots].map(
    ([id, spot]) => [id, { ...spot, ...places.get(id) }] as const,
  );
  return { ...network, spots: new Map(spots) };
};

/** Normal equations of a network by a library, dense, with the sketch as a weak observation, and one solve. */
const denseStep = (network: Network): void => {
  const task = taskOf(network);
  const size = task.frame.later.length;
  const { rows } = stanceAt(task, new Float64Array(size));
  const normal = Matrix.eye(size).mul(1e-6);
  const right = Matrix.zeros(size, 1);
  for (const { columns, values, off } of rows) {
    columns.forEach((row, n) => {
      right.set(row, 0, right.get(row, 0) - values[n]! * off);
      columns.forEach((column, m) => {
        normal.set(row, column, normal.get(row, column) + values[n]! * values[m]!);
      });
    });
  }
  new CholeskyDecomposition(normal).solve(right);
};

describe.each([
  [60, 150],
  [300, 900],
])('%i marks with %i tapes, sketched ten inches off', (marks, tapes) => {
  const network = bigNetwork(marks, tapes, 3, 10);
  const stood = standing(network);

  bench('adjusted, all steps of it', () => {
    adjusted(network);
  });

  bench('one step of it by a dense library', () => {
    denseStep(network);
  });

  bench('what the readings say of each other', () => {
    judge(stood);
  });

  bench('what holds, how well, and the next tape', () => {
    const held = heldAmong(stood.spots, [partOf(stood)], []);
    helpfulTape(held, stood.spots, usualTrusts);
  });
});
