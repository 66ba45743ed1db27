import { crashRounds } from './crashRounds.ts';
import { withProgram } from './servedProgram.ts';

const rounds = Number(process.argv[2] ?? 200);
const seed = Number(process.argv[3] ?? 20261127);

/** Prints what came of killing the browser while something is drawn. */
await withProgram(4318, async (address) => {
  const figures = await crashRounds({ address, rounds, seed, say: console.log });
  const { edits, acknowledged, lost, ahead } = figures;
  console.log(`${rounds} rounds of drawing, the browser killed in each (seed ${seed}):`);
  console.log(`${edits} edits begun, ${acknowledged} said to be kept, ${lost} of these lost;`);
  console.log(`${ahead} more were there, kept before the screen could say so.`);
  if (lost > 0) process.exitCode = 1;
});
