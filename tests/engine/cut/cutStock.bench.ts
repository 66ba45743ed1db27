import { bench, describe } from 'vitest';
import { cutStock } from '../../../src/engine/cut/cutStock.ts';
import { modelledSticks } from './cuttingModel.ts';
import { randomTask } from './randomTask.ts';

const tasks = Array.from({ length: 100 }, (_, n) => randomTask(n));
const plans = Array.from({ length: 500 }, (_, n) => cutStock(randomTask(n)));
const proven = plans.filter(({ bought, least }) => bought === least).length;

// the share is told by the name of the group, the ratio of times by the two rows in it
describe(`cutting 100 tasks; of 500 the fewest sticks are proven for ${proven}`, () => {
  bench('by column generation and filling stick by stick', () => {
    for (const task of tasks) cutStock(task);
  });

  bench('by the mixed-integer model', () => {
    for (const task of tasks) modelledSticks(task, 10);
  });
});
