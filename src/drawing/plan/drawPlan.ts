import type { Layout, LineLayout, Run } from '../../engine/layout.ts';
import { isTerminal, standsByGate, type Post, type PostId } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { DrawnLayer } from '../drawOnPaper.ts';
import type { LayerName } from '../layerNames.ts';
import type { Beside, Primitive } from '../primitive.ts';
import { chainSide } from './chainSide.ts';
import { drawChain } from './drawChain.ts';
import { drawFeature } from './drawFeature.ts';
import { infillOn } from './infillOn.ts';
import { drawFence } from './drawFence.ts';
import { drawFlags } from './drawFlags.ts';
import { drawGate, gateLabel } from './drawGate.ts';
import { drawGround } from './drawGround.ts';
import { drawLeafRooms } from './drawLeafRooms.ts';
import { drawLoneMarks } from './drawLoneMarks.ts';
import { drawWallTops } from './drawWallTops.ts';
import { drawClearGround, drawHeld } from './drawPins.ts';
import { drawPost } from './drawPost.ts';
import { drawStandTag, drawTag } from './drawTag.ts';
import { nearestWays } from './nearestWays.ts';
import { yardMiddle } from './yardMiddle.ts';

/** What a plan shows, one concern each. */
export type PlanPart =
  | ('ground' | 'features' | 'fence' | 'posts' | 'pins' | 'gates' | 'leaf rooms' | 'marks')
  | ('gate labels' | 'tags' | 'chains' | 'flags');

export interface PlanOptions {
  /** Parts to leave away. */
  readonly omit?: readonly PlanPart[];
  /** How lengths are written; the site's own way unless said. */
  readonly lengths?: LengthStyle;
  /** Where the tapes of all runs are printed, chains without room for their pieces say so. */
  readonly tapes?: 'printed';
}

/** What lies lower is drawn first; names of things that lie on top are lettered first. */
const featureOrder: readonly Feature['kind'][] = [
  ...(['paving', 'pool', 'height zone', 'building', 'keep-out'] as const),
  ...(['boundary', 'utility', 'tree', 'note'] as const),
];

/** From a fence to its chain, paper inches. */
const chainOff = 0.36;

const values = <T>(map: Readonly<Record<string, T>>): T[] => Object.values(map);

const drawFeatures = (site: Site): Primitive[] =>
  featureOrder.flatMap((kind) =>
    values(site.features)
      .filter((feature) => feature.kind === kind)
      .flatMap((feature) => drawFeature(feature, site)),
  );

/** How much room the widest hole of the line posts of a run takes beside it, inches. */
const takenBeside = ({ posts }: Run, layout: Layout): number =>
  posts.reduce((most, { post: id }) => {
    const post = layout.posts[id];
    return post === undefined || isTerminal(post) ? most : Math.max(most, post.hole.diameter / 2);
  }, 0);

/**
 * The sides that the posts of a run are numbered on, clear of its holes: that which the chain of its
 * line leaves free, one for all so that they stand in a row; outside of a curve, for each its own.
 */
const freeSides = (run: Run, chain: 1 | -1, layout: Layout): ((post: Post) => Beside) => {
  const taken = takenBeside(run, layout);
  const on = (side: number, way: number): Beside => ({
    way: { x: side * Math.sin(way), y: -side * Math.cos(way) },
    taken,
  });
  if (run.bow !== 0) return ({ along }) => on(-Math.sign(run.bow), along);
  const row = on(chain, run.bearing);
  return () => row;
};

const drawTags = (
  layout: Layout,
  sideOf: (line: LineLayout) => 1 | -1,
  next: ReadonlyMap<PostId, SitePoint>,
): Primitive[] => {
  const tagged = new Map<Post, Primitive>();
  for (const line of values(layout.lines)) {
    for (const run of line.runs) {
      const sides = freeSides(run, sideOf(line), layout);
      for (const { post: id } of run.posts) {
        const post = layout.posts[id];
        if (post === undefined || tagged.has(post)) continue;
        tagged.set(post, drawTag(post, sides(post), next.get(id)));
      }
    }
  }
  const terminalLast = (post: Post): number => Number(isTerminal(post));
  return [...tagged].sort(([a], [b]) => terminalLast(a) - terminalLast(b)).map(([, tag]) => tag);
};

/** The layer that each part is on. */
const layerOf: Readonly<Record<PlanPart, LayerName>> = {
  ground: 'yard',
  features: 'yard',
  fence: 'fence',
  gates: 'fence',
  posts: 'fence',
  pins: 'fence',
  'leaf rooms': 'fence',
  marks: 'yard',
  tags: 'names',
  'gate labels': 'names',
  chains: 'dimensions',
  flags: 'flags',
};

/**
 * The plan of a site in layers, from the ground up: grade shots and contours, what is in the yard, fence, posts, gates, then names,
 * chains and flags. Whatever part of the layout is missing is not drawn.
 */
export const planLayers = (
  site: Site,
  layout: Layout,
  { omit = [], lengths = site.lengths, tapes }: PlanOptions = {},
): readonly DrawnLayer[] => {
  const lines = values(layout.lines);
  const middle = yardMiddle(lines, site);
  const sideOf = (line: LineLayout): 1 | -1 => chainSide(line, middle);
  const chainsOf = (line: LineLayout): readonly Primitive[] => {
    const hook = site.lines[line.id]?.hook ?? 'start';
    const how = { hook, style: lengths, tapes };
    const off = sideOf(line) * chainOff;
    return line.runs.flatMap((run) => drawChain(run, layout, { ...how, off }));
  };
  const gates = values(layout.gates);
  const next = nearestWays(layout);
  const parts: Readonly<Record<PlanPart, () => readonly Primitive[]>> = {
    ground: () => drawGround(layout.ground, lengths),
    features: () => [
      ...drawFeatures(site),
      ...drawWallTops(site, layout),
      ...drawClearGround(site, layout),
    ],
    fence: () => lines.flatMap((line) => drawFence(line, layout, infillOn(site, line.id))),
    gates: () => gates.flatMap(drawGate),
    posts: () => values(layout.posts).flatMap((post) => drawPost(post, next.get(post.id))),
    pins: () => drawHeld(layout),
    'leaf rooms': () => drawLeafRooms(site, layout),
    marks: () => drawLoneMarks(site),
    tags: () => [
      ...drawTags(layout, sideOf, next),
      ...values(layout.posts).filter(standsByGate).map(drawStandTag),
    ],
    'gate labels': () => gates.map((gate) => gateLabel(gate, site.gates[gate.id], lengths)),
    chains: () => lines.flatMap(chainsOf),
    flags: () => drawFlags(layout.flags),
  };
  return (Object.keys(parts) as PlanPart[])
    .filter((part) => !omit.includes(part))
    .map((part) => ({ name: layerOf[part], primitives: parts[part]() }));
};

/** The plan of a site as primitives without layers: see `planLayers`. */
export const drawPlan = (
  site: Site,
  layout: Layout,
  options: PlanOptions = {},
): readonly Primitive[] =>
  planLayers(site, layout, options).flatMap(({ primitives }) => primitives);
