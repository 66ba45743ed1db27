import type { Carry, Shelf } from '../../engine/carry/carry.ts';
import { isTerminal, type PostId } from '../../engine/post.ts';
import type { LineId } from '../../site/ids.ts';
import type { Group } from '../group.ts';
import type { DrawnLine, EndPost } from './drawnLine.ts';
import { drawPost } from './drawPost.ts';
import { nearer } from './drawRun.ts';
import { drawTag } from './drawTag.ts';
import { kept } from './kept.ts';

/** Posts of a line run by run, and what they are called: terminals by letters. */
export interface PostsAlong {
  readonly posts: readonly Group[];
  readonly numbers: readonly Group[];
  readonly letters: readonly Group[];
}

type SharedEnds = ReadonlyMap<PostId, EndPost>;

/** The posts that several lines end at. */
const sharedEnds = (lines: readonly DrawnLine[]): SharedEnds => {
  const found = new Map<PostId, EndPost>();
  for (const end of lines.flatMap(({ shared }) => shared)) {
    const known = found.get(end.post.id);
    const next = known === undefined ? end.next : nearer(known.next, end.next);
    found.set(end.post.id, { ...(known ?? end), next });
  }
  return found;
};

interface DrawnEnd {
  readonly terminal: boolean;
  readonly hole: Group;
  readonly tag: Group;
}

const drawnEnd = ({ post, drawn, next }: EndPost, shelf: Shelf<DrawnEnd>): DrawnEnd => {
  const draw = (before: DrawnEnd | undefined): DrawnEnd => {
    const neighbour = next ?? undefined;
    return {
      terminal: isTerminal(post),
      hole: kept(before?.hole, drawPost(post, neighbour)),
      tag: kept(before?.tag, [drawTag(post, drawn.side(post), neighbour)]),
    };
  };
  return shelf.next(post.id, [post, drawn, next?.x, next?.y], draw);
};

/** Of the ends that other lines come to as well, those that this line is the first to come to. */
const own = (line: LineId, shared: SharedEnds, end: EndPost): EndPost | null => {
  const whole = shared.get(end.post.id) ?? end;
  return whole.line === line ? whole : null;
};

const along = (line: DrawnLine, shared: SharedEnds, carry: Carry): PostsAlong => {
  const left = new Map<PostId, DrawnEnd>();
  const ends = carry.shelf<DrawnEnd>('ends');
  for (const each of line.ends) {
    const end = own(line.id, shared, each);
    if (end !== null) left.set(end.post.id, drawnEnd(end, ends));
  }
  const [posts, numbers, letters]: [Group[], Group[], Group[]] = [[], [], []];
  const put = (id: PostId | undefined): void => {
    const found = id === undefined ? undefined : left.get(id);
    if (id === undefined || found === undefined) return;
    left.delete(id);
    posts.push(found.hole);
    (found.terminal ? letters : numbers).push(found.tag);
  };
  for (const { run, drawn } of line.runs) {
    put(run.posts[0]?.post);
    posts.push(drawn.holes);
    numbers.push(drawn.numbers);
    letters.push(drawn.letters);
    put(run.posts.at(-1)?.post);
  }
  return { posts, numbers, letters };
};

/** The posts along each line, each end with the line and the run that come to it first. */
export const postsAlong = (lines: readonly DrawnLine[], carry: Carry): readonly PostsAlong[] => {
  const shared = sharedEnds(lines);
  const shelf = carry.shelf<PostsAlong>('posts along');
  return lines.map((line) => {
    const others = line.shared.flatMap(({ post }) => {
      const end = shared.get(post.id);
      return [end?.line, end?.drawn, end?.next?.x, end?.next?.y];
    });
    return shelf.part(line.id, [line, ...others], (inner) => along(line, shared, inner));
  });
};
