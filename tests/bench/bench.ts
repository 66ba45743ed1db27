import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import type { Figure, Row } from './row.ts';
import { rows } from './rows.ts';
import { tableOf } from './table.ts';

const asked = process.argv.slice(2);
const quick = asked.includes('--quick');
const named = asked.filter((word) => !word.startsWith('--'));
const unknown = asked.find((word) => word.startsWith('--') && word !== '--quick');
if (unknown !== undefined) {
  console.error(`${unknown}: expected --quick, or words that the names of rows have`);
  process.exit(2);
}

/** Where the figures are written, for those who compare runs; not kept with the code. */
const folder = join(import.meta.dirname, '../../.bench');

const chosen = rows.filter(
  ({ work, only }) =>
    named.every((word) => work.includes(word)) && !(quick && only === 'whole runs'),
);
const done: { readonly row: Row; readonly figure: Figure }[] = [];
for (const row of chosen) {
  const begun = performance.now();
  const figure = await row.run({ quick });
  done.push({ row, figure });
  const took = ((performance.now() - begun) / 1000).toFixed(1);
  console.error(`${done.length} of ${chosen.length}: ${row.work} (${took} s)`);
}

console.log(tableOf(done));
mkdirSync(folder, { recursive: true });
const file = join(folder, quick ? 'quick.json' : 'figures.json');
const machine = { node: process.version, processor: cpus()[0]?.model ?? '', cores: cpus().length };
const told = done.map(({ row: { work, against, bar }, figure }) => ({
  work,
  against,
  bar,
  ...figure,
}));
writeFileSync(file, `${JSON.stringify({ machine, quick, rows: told }, null, 2)}\n`);
// the runs of a browser or a worker are over: nothing more is awaited
process.exit(0);
