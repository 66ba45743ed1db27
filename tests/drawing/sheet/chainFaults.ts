import type { Primitive } from '../../../src/drawing/primitive.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { runName } from '../../../src/drawing/plan/runName.ts';
import type { Layout, LineLayout, Run } from '../../../src/engine/layout.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import type { Site } from '../../../src/site/site.ts';
import { parseLength } from '../../../src/units/parseLength.ts';

type Chain = Extract<Primitive, { kind: 'dimension chain' }>;

/** What is wrong with the chains of a plan. */
export interface ChainFaults {
  readonly chains: number;
  /** Posts that are not a point of the chain of their run exactly once. */
  readonly posts: readonly string[];
  /** Openings that are not one piece of each tier exactly once. */
  readonly openings: readonly string[];
  /** Tiers and groups that do not add up. */
  readonly sums: readonly string[];
}

/** Nearer than this two places are one, inches on the ground. */
const near = 1e-6;

const lengthOf = (text: string): number => {
  const parsed = parseLength(text);
  return parsed.ok ? parsed.value : NaN;
};

const isAt = (a: SitePoint | undefined, b: SitePoint | undefined): boolean =>
  a !== undefined && b !== undefined && distance(a, b) < near;

const sum = (numbers: readonly number[]): number => numbers.reduce((so, next) => so + next, 0);

/** The straight runs of a layout with posts to dimension between. */
const runsOf = (layout: Layout): Run[] =>
  Object.values<LineLayout>(layout.lines).flatMap(({ runs }) =>
    runs.filter(({ bow, posts }) => bow === 0 && posts.length > 1),
  );

/** What a piece of a tier says of its length; of an opening the text says more. */
const written = (text: string): number => lengthOf(/^[^\n]*/.exec(text)?.[0] ?? '');

/** `3 at 9'-0" + 2 at 9'-0 1/16"` added up; NaN where it is none of that sort. */
const addedUp = (text: string): number =>
  sum(
    text.split(' + ').map((part) => {
      const [, count = '', each = ''] = /^(\d+)(?: bays)? at (.+)$/.exec(part) ?? [];
      return Number(count) * lengthOf(each);
    }),
  );

/** What is wrong with the words of a group: its parts and its total against its pieces. */
const groupFault = (text: string, pieces: readonly number[]): boolean => {
  const [said = '', total = said.includes(' together ') ? /together (.+)$/.exec(said)?.[1] : ''] =
    text.split(' = ');
  const whole = sum(pieces);
  const parts = said.includes(' together ') ? whole : addedUp(said);
  const ends = total === '' || total === undefined ? parts : lengthOf(total);
  return !(Math.abs(parts - whole) < near && Math.abs(ends - whole) < near);
};

const sumFaults = (chain: Chain, name: string): string[] => {
  const pieces = chain.texts.map(written);
  const whole = chain.total === null ? pieces[0] : lengthOf(chain.total);
  const off = (of: string, found: number, wanted: number | undefined): string[] =>
    Math.abs(found - (wanted ?? NaN)) < near ? [] : [`${name}: ${of}`];
  const stretches = chain.stretches ?? [];
  return [
    ...off('bays', sum(pieces), whole),
    ...(stretches.length === 0
      ? []
      : off('stretches', sum(stretches.map(({ text }) => written(text))), whole)),
    ...stretches.flatMap(({ from, to, text }) =>
      off(`stretch ${text}`, sum(pieces.slice(from, to)), written(text)),
    ),
    ...(chain.groups ?? []).flatMap(({ from, to, text, shorter }) =>
      [text, shorter ?? text].some((said) => groupFault(said, pieces.slice(from, to)))
        ? [`${name}: group ${text}`]
        : [],
    ),
  ];
};

/** Openings of a run that are not one piece of each tier, or without what is clear of them. */
const openingFaults = (run: Run, chain: Chain, layout: Layout): string[] =>
  run.spaces.flatMap((space, n) => {
    if (space.kind !== 'gate') return [];
    const ends = [n, n + 1].map((at) => layout.posts.get(run.posts[at]?.post ?? 'post:')?.at);
    const between = (from: number, to: number): boolean =>
      [chain.points[from], chain.points[to]].every((point) => ends.some((end) => isAt(point, end)));
    const bays = chain.texts.filter((_, k) => between(k, k + 1));
    const stretches = (chain.stretches ?? []).filter(({ from, to }) => between(from, to));
    const isClear = (text: string): boolean => text.endsWith(' clear');
    const tiers = chain.stretches === undefined ? 0 : 1;
    const once =
      bays.filter(isClear).length === 1 &&
      bays.length === 1 &&
      stretches.filter(({ text }) => isClear(text)).length === tiers &&
      stretches.length === tiers;
    return once ? [] : [`${runName(run, layout)}: ${space.gate}`];
  });

/** Chains of a plan against its layout: every post and opening once, every tier adds up. */
export const chainFaults = (site: Site, layout: Layout): ChainFaults => {
  const chains = drawPlan(site, layout).flatMap((one) =>
    one.kind === 'dimension chain' ? [one] : [],
  );
  const runs = runsOf(layout);
  const placesOf = (run: Run) => run.posts.map(({ post }) => layout.posts.get(post)?.at);
  const found = runs.map((run) => {
    const name = runName(run, layout);
    const ends = placesOf(run);
    // lines that somebody drew over one another have a chain each
    const alike = runs.filter((other) => {
      const places = placesOf(other);
      return ends.every((end) => places.some((place) => isAt(place, end)));
    }).length;
    // its chain is the one that has a point at every post
    const own = chains.filter(({ points }) =>
      ends.every((end) => points.filter((point) => isAt(point, end)).length === 1),
    );
    const [chain] = own.filter(({ points }) => points.length <= ends.length + 2);
    if (own.length !== alike || chain === undefined)
      return { posts: [name], openings: [], sums: [] };
    return {
      posts: [],
      openings: openingFaults(run, chain, layout),
      sums: sumFaults(chain, name),
    };
  });
  return {
    chains: chains.length,
    posts: found.flatMap(({ posts }) => posts),
    openings: found.flatMap(({ openings }) => openings),
    sums: found.flatMap(({ sums }) => sums),
  };
};
