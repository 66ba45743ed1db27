import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inputOf } from './inputOf.ts';
import { most, run, type Fault, type Figures } from './run.ts';
import { kinds, soundFiles } from './seeds.ts';

const [count = 100_000, seed = 1, from = 0] = process.argv.slice(2).map(Number);
if (![count, seed, from].every((one) => Number.isSafeInteger(one) && one >= 0)) {
  console.error('expected whole numbers: how many inputs, the seed, the number of the first input');
  process.exit(2);
}

const row = (name: string, cells: readonly (string | number)[]): string =>
  `${name.padEnd(15)}${cells.map((cell) => String(cell).padStart(12)).join('')}`;

const worst = (all: readonly Figures[], of: 'slowest' | 'largest'): string =>
  all.reduce((so, one) => Math.max(so, one[of][0]), 0).toFixed(0);

const sum = (all: readonly Figures[], of: 'inputs' | 'opened' | 'refused'): number =>
  all.reduce((so, one) => so + one[of], 0);

const cells = (all: readonly Figures[]): (string | number)[] => [
  ...(['inputs', 'refused', 'opened'] as const).map((of) => sum(all, of)),
  worst(all, 'slowest'),
  worst(all, 'largest'),
];

/** Keeps the inputs at fault, so that one can be looked at; where they are. */
const keep = async (faults: readonly Fault[]): Promise<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'spoilt-'));
  const seeds = await soundFiles();
  for (const { input, kind } of faults.slice(0, 200)) {
    writeFileSync(
      join(folder, `${seed}-${input}-${kind.replaceAll(' ', '-')}`),
      inputOf(seeds, seed, input).bytes,
    );
  }
  return folder;
};

const begun = performance.now();
const { byKind, faults } = await run(
  { seed, from, count },
  {
    read: (input) => {
      if ((input + 1 - from) % 10_000 === 0) console.error(`${input + 1 - from} read`);
    },
    fault: ({ input, kind, is, why }) => console.error(`input ${input}, ${kind}, ${is}: ${why}`),
  },
);
console.log(
  `Spoilt files: ${count} inputs of seed ${seed} from number ${from}, ${Math.round((performance.now() - begun) / 1000)} s`,
);
console.log(row('', ['inputs', 'refused', 'opened', 'slowest ms', 'most MB']));
for (const kind of kinds) {
  const figures = byKind.get(kind);
  if (figures !== undefined) console.log(row(kind, cells([figures])));
}
console.log(row('all', cells([...byKind.values()])));
const counted = (['crash', 'hang', 'half-opened', 'line', 'memory'] as const).map(
  (is) => `${is} ${faults.filter((fault) => fault.is === is).length}`,
);
console.log(
  `At fault: ${counted.join(', ')} (over ${most.seconds} s is a hang, over ${most.megabytes} MB memory)`,
);
if (faults.length > 0) {
  console.log(`The inputs at fault are in ${await keep(faults)}`);
  process.exitCode = 1;
}
