import fc from 'fast-check';
import type { PaperName } from '../../../src/drawing/sheet/papers.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import type { Site } from '../../../src/site/site.ts';
import { randomSite } from '../../engine/randomSite.ts';
import { sampleYards } from '../sampleYards.ts';
import { chainFaults, type ChainFaults } from './chainFaults.ts';
import { sheetFigures, type SheetFigures } from './sheetFigures.ts';
import type { LineKind } from './strokesOf.ts';

/** A set to check: `tells` says whether what is wrong is listed one by one. */
interface Checked {
  readonly name: string;
  readonly site: Site;
  readonly layout: Layout;
  readonly paper: PaperName;
}

interface Found extends SheetFigures {
  readonly name: string;
  readonly chains: ChainFaults;
}

const check = ({ name, site, layout, paper }: Checked): Found => ({
  name: `${name}, ${paper}`,
  ...sheetFigures(sheetSet(site, layout, { paper, siteText: '' })),
  chains: chainFaults(site, layout),
});

const samples = sampleYards.flatMap(({ name, site, layout }) =>
  (['letter', 'a4'] as const).map((paper): Checked => ({ name, site, layout, paper })),
);

/** Random sites: every other one on A4 and in millimetres. */
const invented = (count: number): Checked[] =>
  fc.sample(randomSite, { numRuns: count, seed: 1 }).map((drawn, n): Checked => {
    const metric = n % 2 === 1;
    const lengths = metric ? ({ system: 'mm', fraction: 16 } as const) : drawn.lengths;
    const site = { ...drawn, lengths };
    const paper = metric ? 'a4' : 'letter';
    return { name: `random site ${n + 1}`, site, layout: layOutSite(site), paper };
  });

const kinds: readonly LineKind[] = [
  ...(['fence', 'post', 'gate', 'building', 'dimension', 'flag'] as const),
  ...(['hatch', 'swing', 'yard', 'graph paper', 'sheet'] as const),
];

const total = (all: readonly Found[], of: (one: Found) => number): number =>
  all.reduce((sum, one) => sum + of(one), 0);

const lines = (all: readonly Found[], where: 'onPlans' | 'onOthers'): string =>
  kinds.map((kind) => `${kind} ${total(all, (one) => one[where][kind]?.length ?? 0)}`).join(', ');

const onLines = ({ name, onPlans, onOthers }: Found): string[] =>
  [onPlans, onOthers].flatMap((where) =>
    kinds.flatMap((kind) => (where[kind] ?? []).map((text) => `${name}, ${text} on ${kind}`)),
  );

/** What must not be at all, one by one. */
const hard = (all: readonly Found[]): string[] =>
  all.flatMap((found) => {
    const { name, overlaps, outside, chains } = found;
    return [
      ...overlaps.map((pair) => `${name}, ${pair}`),
      ...outside.map((text) => `${name}, ${text} leaves the frame`),
      ...chains.posts.map((run) => `${name}: posts of ${run}`),
      ...chains.openings.map((opening) => `${name}: opening ${opening}`),
      ...chains.sums.map((sum) => `${name}: ${sum} does not add up`),
      ...onLines(found),
    ];
  });

/** The least height of capitals, inches: 3/32 in, and 2.5 mm on ISO papers, which is more. */
const leastCapitals = 2.5 / 25.4;

const report = (title: string, all: readonly Found[]): string[] => {
  const least = Math.min(...all.map((one) => one.leastCapitals));
  return [
    `${title}: ${all.length} sets, ${total(all, ({ pages }) => pages)} pages, ${total(all, ({ texts }) => texts)} texts`,
    `  pairs of texts that overlap: ${total(all, ({ overlaps }) => overlaps.length)}`,
    `  texts that leave the frame: ${total(all, ({ outside }) => outside.length)}`,
    `  texts on lines of plans: ${lines(all, 'onPlans')}`,
    `  texts on lines of other pages: ${lines(all, 'onOthers')}`,
    `  chains: ${total(all, ({ chains }) => chains.chains)}`,
    `  runs whose posts are not each dimensioned once: ${total(all, ({ chains }) => chains.posts.length)}`,
    `  openings not dimensioned once in each tier: ${total(all, ({ chains }) => chains.openings.length)}`,
    `  tiers and groups that do not add up: ${total(all, ({ chains }) => chains.sums.length)}`,
    `  smallest capitals: ${least.toFixed(4)} in, ${(least * 25.4).toFixed(2)} mm`,
  ];
};

const count = Number(process.argv[2] ?? 300);
const list = process.argv.includes('--list');
const [ofSamples, ofInvented] = [samples.map(check), invented(count).map(check)];
const all = [...ofSamples, ...ofInvented];
const wrong = hard(all);
const small = all.filter((one) => one.leastCapitals < leastCapitals);
console.log(
  [
    ...report('Sample sites on Letter and A4', ofSamples),
    ...report(`${count} random sites on Letter or A4`, ofInvented),
    ...wrong.slice(0, list ? Infinity : 20),
  ].join('\n'),
);
if (wrong.length > 0 || small.length > 0) process.exit(1);
