import type { Layout, LineLayout, Run } from '../../engine/layout.ts';
import { isTerminal, type Post, type PostId } from '../../engine/post.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Primitive } from '../primitive.ts';
import { chainSide } from './chainSide.ts';
import { drawChain } from './drawChain.ts';
import { drawFeature } from './drawFeature.ts';
import { drawFence } from './drawFence.ts';
import { drawFlags } from './drawFlags.ts';
import { drawGate, gateLabel } from './drawGate.ts';
import { drawPost } from './drawPost.ts';
import { drawTag } from './drawTag.ts';
import { nearestWays } from './nearestWays.ts';

/** What a plan shows, one concern each. */
export type PlanPart =
  'features' | 'fence' | 'posts' | 'gates' | 'gate labels' | 'tags' | 'chains' | 'flags';

export interface PlanOptions {
  /** Parts to leave away. */
  readonly omit?: readonly PlanPart[];
  /** How lengths are written; the site's own way unless said. */
  readonly lengths?: LengthStyle;
}

/** What lies lower is drawn first; names of things that lie on top are lettered first. */
const featureOrder: readonly Feature['kind'][] = [
  ...(['paving', 'pool', 'building', 'keep-out'] as const),
  ...(['boundary', 'utility', 'tree', 'note'] as const),
];

/** From a fence to its chain, paper inches. */
const chainOff = 0.36;

const values = <T>(map: Readonly<Record<string, T>>): T[] => Object.values(map);

const middleOf = (lines: readonly LineLayout[], site: Site): SitePoint | null => {
  const ends = lines.flatMap(({ legs }) => legs.flatMap(({ start, end }) => [start, end]));
  const bounds = boundsOf([...ends, ...values(site.marks)]);
  if (bounds === null) return null;
  return { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
};

const drawFeatures = (site: Site): Primitive[] =>
  featureOrder.flatMap((kind) =>
    values(site.features)
      .filter((feature) => feature.kind === kind)
      .flatMap((feature) => drawFeature(feature, site)),
  );

/** The side of a post that its line's chain leaves free, as up or down on the sheet. */
const tagSide = (run: Run | undefined, side: 1 | -1): 1 | -1 =>
  run !== undefined && Math.cos(run.bearing) * side > 0 ? -1 : 1;

const drawTags = (
  layout: Layout,
  sideOf: (line: LineLayout) => 1 | -1,
  next: ReadonlyMap<PostId, SitePoint>,
): Primitive[] => {
  const tagged = new Map<Post, Primitive>();
  for (const line of values(layout.lines)) {
    for (const run of line.runs) {
      for (const { post: id } of run.posts) {
        const post = layout.posts[id];
        if (post === undefined || tagged.has(post)) continue;
        tagged.set(post, drawTag(post, tagSide(run, sideOf(line)), next.get(id)));
      }
    }
  }
  const terminalLast = (post: Post): number => Number(isTerminal(post));
  return [...tagged].sort(([a], [b]) => terminalLast(a) - terminalLast(b)).map(([, tag]) => tag);
};

/**
 * The plan of a site, from the ground up: what is in the yard, fence, posts, gates, then names,
 * chains and flags. Whatever part of the layout is missing is not drawn.
 */
export const drawPlan = (
  site: Site,
  layout: Layout,
  { omit = [], lengths = site.lengths }: PlanOptions = {},
): readonly Primitive[] => {
  const lines = values(layout.lines);
  const middle = middleOf(lines, site);
  const sideOf = (line: LineLayout): 1 | -1 => chainSide(line, middle);
  const chainsOf = (line: LineLayout): readonly Primitive[] => {
    const how = { hook: site.lines[line.id]?.hook ?? 'start', style: lengths } as const;
    const off = sideOf(line) * chainOff;
    return line.runs.flatMap((run) => drawChain(run, layout, { ...how, off }));
  };
  const gates = values(layout.gates);
  const next = nearestWays(layout);
  const parts: Readonly<Record<PlanPart, () => readonly Primitive[]>> = {
    features: () => drawFeatures(site),
    fence: () => lines.flatMap((line) => drawFence(line, layout)),
    gates: () => gates.flatMap(drawGate),
    posts: () => values(layout.posts).flatMap((post) => drawPost(post, next.get(post.id))),
    tags: () => drawTags(layout, sideOf, next),
    chains: () => lines.flatMap(chainsOf),
    'gate labels': () => gates.map((gate) => gateLabel(gate, site.gates[gate.id], lengths)),
    flags: () => drawFlags(layout.flags),
  };
  return (Object.keys(parts) as PlanPart[])
    .filter((part) => !omit.includes(part))
    .flatMap((part) => parts[part]());
};
