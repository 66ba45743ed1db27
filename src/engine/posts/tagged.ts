import type { Carry } from '../carry/carry.ts';
import { isTerminal, type Post } from '../post.ts';
import type { LineMet, MetRun } from './metRuns.ts';

/** A, B … Z, AA, AB … for 0, 1 … 25, 26, 27 …. */
export const letters = (n: number): string => {
  const last = String.fromCharCode(65 + (n % 26));
  return n < 26 ? last : letters(Math.floor(n / 26) - 1) + last;
};

/** How many terminals and line posts have their tags. */
interface Counts {
  readonly terminals: number;
  readonly lines: number;
}

interface Tagged {
  readonly posts: readonly Post[];
  readonly after: Counts;
}

// field by field: of thousands of posts a spread takes ten times as long
const withTag = (post: Post, tag: string): Post => {
  const { id, kind, at, along, od, section, pipe, lines, gates, above, hole, wall, length } = post;
  return { id, tag, kind, at, along, od, section, pipe, lines, gates, above, hole, wall, length };
};

const taggedFrom = (met: readonly Post[], counts: Counts): Tagged => {
  let { terminals, lines } = counts;
  const posts = met.map((post) =>
    withTag(post, isTerminal(post) ? letters(terminals++) : `${(lines += 1)}`),
  );
  return { posts, after: { terminals, lines } };
};

interface LineTagged {
  readonly runs: readonly (readonly Post[])[];
  readonly after: Counts;
}

const taggedLine = (met: readonly MetRun[], from: Counts, carry: Carry): LineTagged => {
  const known = carry.shelf<Tagged>('tagged posts');
  let counts = from;
  const runs = met.map(({ key, posts: own }) => {
    const { terminals, lines } = counts;
    const found = known.take(key, [own, terminals, lines], () =>
      taggedFrom(own, { terminals, lines }),
    );
    counts = found.after;
    return found.posts;
  });
  return {
    runs: carry.shelf<readonly (readonly Post[])[]>('tagged runs').list('', runs),
    after: counts,
  };
};

/**
 * Terminal posts tagged by letters and line posts by numbers, in the order in which runs meet them:
 * a list for each run of each line.
 */
export const tagged = (
  all: readonly LineMet[],
  carry: Carry,
): readonly (readonly (readonly Post[])[])[] => {
  const known = carry.shelf<LineTagged>('tagged posts of a line');
  let counts: Counts = { terminals: 0, lines: 0 };
  return all.map(({ id, met }) => {
    const from = counts;
    const found = known.part(id, [met, from.terminals, from.lines], (own) =>
      taggedLine(met, from, own),
    );
    counts = found.after;
    return found.runs;
  });
};
