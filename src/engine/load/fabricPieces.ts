import { slack } from '../../geometry/tolerance.ts';
import type { LineId, SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Layout, LineLayout, Run } from '../layout.ts';
import { isTerminal, type PostId } from '../post.ts';

/**
 * Fabric that is stretched in one piece, from the post that its first end is barred to, past line posts, to
 * the post of its other end. In a fence that steps every bay is a piece. Lengths in inches, parallel to the
 * grade, centre to centre.
 */
export interface FabricPiece {
  readonly line: LineId;
  readonly spec: SpecId;
  /** Its posts in turn, both ends included: one more than the bays. */
  readonly posts: readonly PostId[];
  readonly bays: readonly Inches[];
  readonly length: Inches;
}

/** One bay where it stands. */
interface Bay {
  readonly stretch: number;
  readonly from: PostId;
  readonly to: PostId;
  readonly length: Inches;
  /** Whether the fabric is at another height than in the bay before. */
  readonly steps: boolean;
}

/** The bays of a run before which the fabric steps: its bottom jumps there. */
const stepsIn = ({ ground }: Run): ReadonlySet<PostId> => {
  const jumps = new Set<PostId>();
  for (const { bays, stands } of ground?.fences ?? []) {
    bays.forEach((bay, n) => {
      const before = bays[n - 1];
      const post = stands[n];
      if (before === undefined || post === undefined) return;
      if (Math.abs(bay.from.z - before.to.z) > slack) jumps.add(post);
    });
  }
  return jumps;
};

const baysOf = (run: Run): Bay[] => {
  const jumps = stepsIn(run);
  return run.spaces.flatMap((space, n): Bay[] => {
    const [from, to] = [run.posts[n]?.post, run.posts[n + 1]?.post];
    if (space.kind !== 'bay' || from === undefined || to === undefined) return [];
    return [{ stretch: space.stretch, from, to, length: space.length, steps: jumps.has(from) }];
  });
};

interface Piece {
  readonly stretch: number;
  readonly posts: readonly PostId[];
  readonly bays: readonly Inches[];
}

/** Round a closed line that does not begin at a terminal the last piece goes on as the first. */
const roundTheStart = (pieces: readonly Piece[], posts: Layout['posts']): readonly Piece[] => {
  const [first, ...others] = pieces;
  const last = others.at(-1);
  const start = first?.posts[0];
  if (first === undefined || last === undefined || start === undefined) return pieces;
  const post = posts[start];
  if (last.posts.at(-1) !== start || post === undefined || isTerminal(post)) return pieces;
  const joined = {
    stretch: first.stretch,
    posts: [...last.posts, ...first.posts.slice(1)],
    bays: [...last.bays, ...first.bays],
  };
  return [joined, ...others.slice(0, -1)];
};

/** The pieces of fabric of a line, in the order in which it was drawn. */
export const fabricPieces = (
  site: Pick<Site, 'lines'>,
  line: LineLayout,
  posts: Layout['posts'],
): FabricPiece[] => {
  const spec = site.lines[line.id]?.spec;
  if (spec === undefined) return [];
  const pieces: { stretch: number; posts: PostId[]; bays: Inches[] }[] = [];
  for (const { stretch, from, to, length, steps } of line.runs.flatMap(baysOf)) {
    const last = pieces.at(-1);
    if (last?.stretch === stretch && last.posts.at(-1) === from && !steps) {
      last.posts.push(to);
      last.bays.push(length);
    } else pieces.push({ stretch, posts: [from, to], bays: [length] });
  }
  return roundTheStart(pieces, posts).map(({ posts: own, bays }) => ({
    line: line.id,
    spec,
    posts: own,
    bays,
    length: inches(bays.reduce((sum, bay) => sum + bay, 0)),
  }));
};
