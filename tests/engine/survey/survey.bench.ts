import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { bench, describe } from 'vitest';
import { newCarry } from '../../../src/engine/carry/carry.ts';
import { adjusted } from '../../../src/engine/survey/adjusted.ts';
import { partOf } from '../../../src/engine/survey/bodies.ts';
import { heldAmong } from '../../../src/engine/survey/held.ts';
import { helpfulTape } from '../../../src/engine/survey/helpfulTape.ts';
import { judge } from '../../../src/engine/survey/judged.ts';
import type { Network } from '../../../src/engine/survey/networks.ts';
import { stanceAt, taskOf } from '../../../src/engine/survey/stance.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { surveyOf } from '../../../src/engine/survey/surveyOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { usualTrusts } from '../../../src/site/trusts.ts';
import { inches } from '../../../src/units/inches.ts';
import { bigNetwork } from './bigNetwork.ts';
import { gridSite } from './gridSite.ts';

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

/** Two yards in one document, of which one is edited: the other stands as it did. */
describe('an edit of one of two yards of 60 marks and 150 tapes', () => {
  const near = gridSite({ marks: 60, tapes: 150 });
  const far = gridSite({ marks: 60, tapes: 150, name: 'far' });
  const both: Site = {
    ...near,
    marks: { ...near.marks, ...far.marks },
    observations: { ...near.observations, ...far.observations },
  };
  const before = surveyed(both, null);
  const laid = newCarry();
  surveyOf(before.site, laid);
  const read = before.drawn.observations['observation:1'];
  if (read?.kind !== 'tape') throw new Error('no tape');
  let step = 0;
  const edited = (): Site => {
    step += 1;
    const length = inches(read.length + (step % 8) / 64);
    return {
      ...both,
      observations: { ...both.observations, 'observation:1': { ...read, length } },
    };
  };

  bench('with what the layout before has of the other', () => {
    const { site } = surveyed(edited(), before);
    surveyOf(site, newCarry(laid.pieces));
  });

  bench('from nothing', () => {
    const { site } = surveyed(edited(), null);
    surveyOf(site, newCarry());
  });
});

/** What a hand waits for that types a reading: where all stands, and what is said of it. */
describe('one yard while a reading is typed', () => {
  const gridSite60 = gridSite({ marks: 60, tapes: 150 });
  const gridSiteMisread = gridSite({ marks: 60, tapes: 150, misread: 60 });
  const gridSite20 = gridSite({ marks: 20, tapes: 50 });

  bench('60 marks, 150 tapes', () => {
    surveyOf(surveyed(gridSite60, null).site, newCarry());
  });

  bench('the same with a tape five feet off', () => {
    surveyOf(surveyed(gridSiteMisread, null).site, newCarry());
  });

  bench('20 marks, 50 tapes', () => {
    surveyOf(surveyed(gridSite20, null).site, newCarry());
  });
});
