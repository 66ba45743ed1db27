import type { Carry } from '../../engine/carry/carry.ts';
import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import { standsByGate } from '../../engine/post.ts';
import { touchedPosts, type Touched } from '../../engine/posts/touchedPosts.ts';
import type { LineId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Bundle, Group } from '../group.ts';
import { chainSide } from './chainSide.ts';
import { drawLine, type DrawnLine } from './drawnLine.ts';
import { drawPost } from './drawPost.ts';
import type { RunStyle } from './drawRun.ts';
import { drawStandTag } from './drawTag.ts';
import { infillOn } from './infillOn.ts';
import { postsAlong } from './postsAlong.ts';
import { yardMiddle } from './yardMiddle.ts';

/** From a fence to its chain, paper inches. */
const chainOff = 0.36;

/** All fence of a yard in groups, line by line: what hangs, the holes, what posts are called, the chains of dimensions. */
export interface FenceGroups {
  readonly fence: readonly Bundle[];
  readonly posts: readonly Bundle[];
  readonly tags: readonly Bundle[];
  readonly chains: readonly Bundle[];
}

interface Written {
  readonly lengths: LengthStyle;
  readonly tapes: 'printed' | undefined;
}

const values = <T>(map: Readonly<Record<string, T>>): T[] => Object.values(map);

/** What of the posts is touched since the plan before; null where there was none. */
const touchedSince = ({ posts }: Layout, carry: Carry): Touched | null => {
  interface Seen {
    readonly posts: Layout['posts'];
    readonly touched: Touched | null;
  }
  const seen = carry.shelf<Seen>('posts seen');
  const look = (before: Seen | undefined): Seen => ({
    posts,
    touched: before === undefined ? null : touchedPosts(before.posts, posts),
  });
  return seen.renew('', () => false, look).touched;
};

const gatesByLine = (gates: readonly GateLayout[]): ReadonlyMap<LineId, readonly GateLayout[]> => {
  const found = new Map<LineId, GateLayout[]>();
  for (const gate of gates) {
    const there = found.get(gate.line);
    if (there === undefined) found.set(gate.line, [gate]);
    else there.push(gate);
  }
  return found;
};

const stylesOf = (lines: readonly LineLayout[], site: Site, written: Written, carry: Carry) => {
  const legs = lines.map((line) => line.legs);
  const middle = carry
    .shelf<ReturnType<typeof yardMiddle>>('middle')
    .take('', [site.marks, ...legs], () => yardMiddle(lines, site));
  const sides = carry.shelf<1 | -1>('chain sides');
  const styles = carry.shelf<RunStyle>('run styles');
  const { lengths: style, tapes } = written;
  return (line: LineLayout): RunStyle => {
    const from = [line.legs, line.length, middle?.x, middle?.y];
    const chain = sides.take(line.id, from, () => chainSide(line, middle));
    const [of, hook] = [infillOn(site, line.id), site.lines[line.id]?.hook ?? 'start'];
    const how = { of, chain, hook, style, off: chain * chainOff, tapes };
    return styles.take(line.id, Object.values(how), () => how);
  };
};

const drawnLines = (site: Site, layout: Layout, written: Written, carry: Carry): DrawnLine[] => {
  const lines = values(layout.lines);
  const touched = touchedSince(layout, carry);
  // another thing whenever any post of the line is: so no list of them has to be kept
  const posts = carry.shelf<object>('posts of a line');
  const stand = (line: LineId): boolean => touched !== null && !touched.lines.has(line);
  const gates = gatesByLine(values(layout.gates));
  const styleOf = stylesOf(lines, site, written, carry);
  const drawn = carry.shelf<DrawnLine>('lines');
  return lines.map((line) => {
    const how = styleOf(line);
    const seen = posts.renew(
      line.id,
      () => stand(line.id),
      () => ({}),
    );
    const from = [line, how, seen, ...(gates.get(line.id) ?? [])];
    return drawn.part(line.id, from, (own) => drawLine({ line, layout, how, touched }, own));
  });
};

/** Whether a gate has posts besides those of its opening. */
const hasStands = ({ id, slides, stop }: GateLayout, site: Site): boolean =>
  slides.length > 0 || stop !== null || site.gates[id]?.holdOpen === true;

/** Posts that stand beside the fence for a gate. */
const besides = (site: Site, layout: Layout, carry: Carry) => {
  // few yards have any, and all posts of a yard are many
  if (!values(layout.gates).some((gate) => hasStands(gate, site))) return { posts: [], tags: [] };
  const kept = carry.shelf<{ readonly hole: Group; readonly tag: Group }>('posts beside');
  const drawn = [...layout.posts.values()].filter(standsByGate).map((post) =>
    kept.take(post.id, [post], () => ({
      hole: drawPost(post, undefined),
      tag: [drawStandTag(post)],
    })),
  );
  return { posts: drawn.map(({ hole }) => hole), tags: drawn.map(({ tag }) => tag) };
};

/**
 * Every fence line of a site: see `FenceGroups`. What is drawn of the same as before is the very same group, and
 * where that is so of a whole line, the very same bundle: a line is looked into only where any of its posts,
 * runs or gates is another.
 */
export const fenceGroups = (
  site: Site,
  layout: Layout,
  written: Written,
  carry: Carry,
): FenceGroups => {
  const lines = drawnLines(site, layout, written, carry);
  const along = postsAlong(lines, carry);
  const beside = besides(site, layout, carry);
  return {
    fence: lines.map(({ fence }) => fence),
    posts: [...along.map(({ posts }) => posts), beside.posts],
    // terminals are called last
    tags: [
      ...along.map(({ numbers }) => numbers),
      ...along.map(({ letters }) => letters),
      beside.tags,
    ],
    chains: lines.map(({ chains }) => chains),
  };
};
