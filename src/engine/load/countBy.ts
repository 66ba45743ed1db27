import type { Counting } from '../../site/counting.ts';
import type { CountingSetting } from '../../trade/countingSources.ts';
import type { CountRule, HowMany } from '../../trade/countRules.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Carry } from '../carry/carry.ts';
import type { LoadLine } from '../loadLine.ts';
import type { Counted } from './counted.ts';
import { grouped } from './grouped.ts';
import { sizeCodes, sizeWords } from './sizes.ts';

/** How things are spaced, and how the site writes lengths. */
export interface CountedHow {
  readonly settings: Counting;
  readonly style: LengthStyle;
}

/** A ceiling that takes no notice of how a length was added up. */
const upTo = (share: number): number => Math.max(0, Math.ceil(share - 1e-9));

/**
 * How many of its item a rule takes where it counts one by one, or how often what it counts by spacings:
 * the company's own number where it has one.
 */
const timesOf = ({ id, how }: CountRule, { times }: Counting): number =>
  times[id] ?? ('times' in how ? how.times : 1);

/** How many, or how long, a rule takes for one thing, once. */
const takenBy = (how: HowMany, { length }: Counted, settings: Counting): number => {
  const spacing = (key: CountingSetting): number => Number(settings[key]);
  switch (how.kind) {
    case 'each':
      return 1;
    case 'up the height':
      return 1 + upTo((length - 2 * spacing(how.inset)) / spacing(how.every));
    case 'up the post':
      return Math.max(0, upTo(length / spacing(how.every)) - how.less);
    case 'along':
      return upTo(length / spacing(how.every));
    case 'length':
      return length;
    case 'with':
      return 0;
  }
};

const nameOf = ({ item, by }: CountRule, { sizes }: Counted, style: LengthStyle): string =>
  [item, ...sizeWords(by, sizes, style)].join(', ');

/** What an item is called in price lists: its rule and its sizes, the same on every site. */
const codeOf = ({ id, by }: CountRule, { sizes }: Counted): string =>
  [id, ...sizeCodes(by, sizes)].join(' ');

/** What some things or lines stand on, each once. */
const onAll = (all: readonly LoadLine['of'][]): LoadLine['of'] => ({
  posts: [...new Set(all.flatMap(({ posts }) => posts))],
  lines: [...new Set(all.flatMap(({ lines }) => lines))],
  gates: [...new Set(all.flatMap(({ gates }) => gates))],
});

const lineOf = (
  rule: CountRule,
  told: Pick<LoadLine, 'item' | 'code' | 'count' | 'of'> & Partial<Pick<LoadLine, 'each'>>,
): LoadLine => ({
  each: null,
  ...told,
  part: rule.part,
  unit: rule.how.kind === 'length' ? 'length' : 'each',
  sold: null,
  rule: rule.says,
  source: rule.source.text,
});

/** In an order that does not hang on the end from which a line was drawn. */
const byCode = (a: LoadLine, b: LoadLine): number => (a.code < b.code ? -1 : 1);

/** The length of each item that is cut to its height less a setting. */
const eachOf = ({ shorter }: CountRule, { sizes }: Counted, settings: Counting): Inches | null =>
  shorter === undefined || sizes.height === undefined
    ? null
    : inches(Math.max(0, sizes.height - Number(settings[shorter])));

/** A line of a list, and what the things on it measure. */
interface Listed {
  readonly line: LoadLine;
  readonly sizes: Counted['sizes'];
}

const ownLines = (
  rule: CountRule,
  things: readonly Counted[],
  { settings, style }: CountedHow,
): Listed[] =>
  grouped(things, (one) => codeOf(rule, one))
    .flatMap((same): Listed[] => {
      const [first] = same;
      const taken = same.reduce(
        (sum, one) => sum + one.count * takenBy(rule.how, one, settings),
        0,
      );
      const count = timesOf(rule, settings) * taken;
      if (first === undefined || count === 0) return [];
      const [item, code] = [nameOf(rule, first, style), codeOf(rule, first)];
      const each = eachOf(rule, first, settings);
      const of = onAll(same.map(({ on }) => on));
      return [{ line: lineOf(rule, { item, code, count, each, of }), sizes: first.sizes }];
    })
    .toSorted((a, b) => byCode(a.line, b.line));

const withLines = (
  rule: CountRule,
  how: Extract<HowMany, { kind: 'with' }>,
  {
    counted,
    settings,
  }: Pick<CountedHow, 'settings'> & {
    readonly counted: ReadonlyMap<string, readonly Listed[]>;
  },
): LoadLine[] => {
  const { over, upTo: most } = how.posts;
  const isOn = ({ sizes: { post } }: Listed): boolean =>
    post !== undefined && post.od > over && post.od <= most;
  const lines = how.rules.flatMap((id) =>
    (counted.get(id) ?? []).filter(isOn).map(({ line }) => line),
  );
  const count = timesOf(rule, settings) * lines.reduce((sum, line) => sum + line.count, 0);
  if (count === 0) return [];
  const of = onAll(lines.map((line) => line.of));
  return [lineOf(rule, { item: rule.item, code: rule.id, count, of })];
};

const none: readonly Counted[] = [];

/** The settings that a rule looks at, as they are. */
const settingsOf = (rule: CountRule, settings: Counting): readonly unknown[] => {
  const { how, shorter } = rule;
  const own = [
    'every' in how ? how.every : undefined,
    'inset' in how ? how.inset : undefined,
    shorter,
  ];
  return own.map((key) => key && settings[key]);
};

/**
 * The lines of a load list by rules, in their order: what each rule counts, those of one size together.
 * A rule that goes with others counts their items.
 */
export const countBy = (
  rules: readonly CountRule[],
  things: readonly Counted[],
  how: CountedHow,
  carry: Carry,
): LoadLine[] => {
  const { settings, style } = how;
  const byBasis = carry
    .shelf<ReadonlyMap<Counted['basis'] | null, readonly Counted[]>>('things by what they are')
    .take('', [things], () => {
      const all = grouped(things, ({ basis }) => basis);
      return new Map(all.map((same) => [same[0]?.basis ?? null, same]));
    });
  const known = carry.shelf<readonly Listed[]>('lines of a rule');
  const counted = new Map<string, readonly Listed[]>(
    rules.map((rule) => {
      const own = byBasis.get(rule.basis) ?? none;
      const from = [own, rule, timesOf(rule, settings), ...settingsOf(rule, settings), style];
      return [rule.id, known.take(rule.id, from, () => ownLines(rule, own, how))];
    }),
  );
  return rules.flatMap((rule) =>
    rule.how.kind === 'with'
      ? withLines(rule, rule.how, { counted, settings: how.settings })
      : (counted.get(rule.id) ?? []).map(({ line }) => line),
  );
};
