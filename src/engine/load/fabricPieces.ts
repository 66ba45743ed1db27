import { slack } from '../../geometry/tolerance.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { LineId, SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Layout, LineLayout, Run } from '../layout.ts';
import { isTerminal, type PostId } from '../post.ts';
import { stepsAllAlong } from '../posts/stepsAllAlong.ts';

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
  /** Whether it is of a run that steps all along: level, and between its posts in plan. */
  readonly level: boolean;
}

/** One bay where it stands. */
interface Bay {
  readonly stretch: number;
  readonly from: PostId;
  readonly to: PostId;
  readonly length: Inches;
  /** Whether the fabric is at another height than in the bay before. */
  readonly steps: boolean;
  readonly level: boolean;
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

const baysOf = (run: Run, line: FenceLine): Bay[] => {
  const jumps = stepsIn(run);
  const level = stepsAllAlong(line, run.legs);
  return run.spaces.flatMap((space, n): Bay[] => {
    const [from, to] = [run.posts[n]?.post, run.posts[n + 1]?.post];
    if (space.kind !== 'bay' || from === undefined || to === undefined) return [];
    const { stretch, length } = space;
    return [{ stretch, from, to, length, steps: jumps.has(from), level }];
  });
};

interface Piece {
  readonly stretch: number;
  readonly level: boolean;
  readonly posts: readonly PostId[];
  readonly bays: readonly Inches[];
}

/** Round a closed line that does not begin at a terminal the last piece goes on as the first. */
const roundTheStart = (pieces: readonly Piece[], posts: Layout['posts']): readonly Piece[] => {
  const [first, ...others] = pieces;
  const last = others.at(-1);
  const start = first?.posts[0];
  if (first === undefined || last === undefined || start === undefined) return pieces;
  const post = posts.get(start);
  if (last.posts.at(-1) !== start || post === undefined || isTerminal(post)) return pieces;
  const joined = {
    stretch: first.stretch,
    level: first.level && last.level,
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
  const drawn = site.lines[line.id];
  if (drawn === undefined) return [];
  const { spec } = drawn;
  const pieces: (Piece & { posts: PostId[]; bays: Inches[] })[] = [];
  const all = line.runs.flatMap((run) => baysOf(run, drawn));
  for (const { stretch, from, to, length, steps, level } of all) {
    const last = pieces.at(-1);
    if (last?.stretch === stretch && last.posts.at(-1) === from && !steps) {
      last.posts.push(to);
      last.bays.push(length);
    } else pieces.push({ stretch, level, posts: [from, to], bays: [length] });
  }
  return roundTheStart(pieces, posts).map(({ posts: own, bays, level }) => ({
    line: line.id,
    spec,
    posts: own,
    bays,
    length: inches(bays.reduce((sum, bay) => sum + bay, 0)),
    level,
  }));
};
