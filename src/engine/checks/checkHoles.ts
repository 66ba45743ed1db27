import { distance } from '../../geometry/distance.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import type { Flag } from '../flag.ts';
import type { Run } from '../layout.ts';
import type { Post } from '../post.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { clashingRuns } from './clashingRuns.ts';
import { holesMissing } from './holesMissing.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Holes are looked for within this many inches: a wider one is a slip of the finger. */
const widest = 120;

/** A post and the run that meets it first, with the number of the stretch that leads up to it. */
interface Stand {
  readonly post: Post;
  readonly run: Run;
  readonly stretch: number;
}

/** Two holes that meet, and by how many inches. */
interface Clash {
  readonly earlier: Stand;
  readonly later: Stand;
  readonly missing: number;
}

/** The posts of some runs in the order in which they are met, all that could clash among them. */
const standsOf = (laid: LaidLines, keys: ReadonlySet<string>): Stand[] =>
  laid.runs.flatMap(({ key, run }, n) => {
    if (!keys.has(key)) return [];
    const places = new Map(run.posts.map(({ post }, place) => [post, place] as const).toReversed());
    return (laid.tagged[n] ?? []).map((post) => {
      const space = run.spaces[(places.get(post.id) ?? 0) - 1];
      return { post, run, stretch: space?.kind === 'bay' ? space.stretch : 0 };
    });
  });

/** One number for each square of the ground; columns and rows stay far below 2^22 either way. */
const squareAt = (column: number, row: number): number => column * 2 ** 23 + row;

/** The worst clash of a post with the posts in its own square and those round it; null for none. */
const worstNear = (squares: ReadonlyMap<number, readonly Stand[]>, later: Stand, side: number) => {
  const [column, row] = [Math.floor(later.post.at.x / side), Math.floor(later.post.at.y / side)];
  let worst: Clash | null = null;
  for (const across of [column - 1, column, column + 1]) {
    for (const up of [row - 1, row, row + 1]) {
      for (const earlier of squares.get(squareAt(across, up)) ?? []) {
        const by = holesMissing(earlier.post, later.post);
        if (by > (worst?.missing ?? slack)) worst = { earlier, later, missing: by };
      }
    }
  }
  return { worst, square: squareAt(column, row) };
};

/**
 * The worst clash of each post with the posts before it. A post that clashes is looked at no more,
 * so that those looked at stand apart and are few round any place.
 */
const clashesOf = (stands: readonly Stand[], side: number): Clash[] => {
  const squares = new Map<number, Stand[]>();
  const clashes: Clash[] = [];
  for (const later of stands) {
    const { worst, square } = worstNear(squares, later, side);
    const own = squares.get(square);
    if (worst !== null) clashes.push(worst);
    else if (own === undefined) squares.set(square, [later]);
    else own.push(later);
  }
  return clashes;
};

/** The worst clash of each stretch, and of each two runs. */
const worstOf = (clashes: readonly Clash[]): Clash[] => {
  const worst = new Map<string, Clash>();
  for (const clash of clashes) {
    const { earlier, later } = clash;
    const key = [earlier.run.id, later.run.id, later.stretch].join('|');
    if (clash.missing > (worst.get(key)?.missing ?? 0)) worst.set(key, clash);
  }
  return [...worst.values()];
};

/** Posts that are not one although their holes meet: the worst of each stretch and of each two runs. */
export const checkHoles = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  const clashing = clashingRuns(laid.meets, carry);
  if (clashing.keys.size === 0) return [];
  const side = Math.max(1, Math.min(widest, clashing.widest));
  const clashes = clashesOf(standsOf(laid, clashing.keys), side);
  return worstOf(clashes).map(({ earlier, later, missing: by }) => {
    const [a, b] = [earlier.post, later.post];
    const [apart, more] = [distance(a.at, b.at), by].map((length) =>
      formatLength(inches(length), fineStyle(site.lengths)),
    );
    return {
      level: 'stop',
      rule: 'no room between posts',
      place: { kind: 'leg', line: later.run.line, id: later.run.legs[0] ?? 'vertex:' },
      at: midpoint(a.at, b.at),
      message: phrase`Posts ${a.tag} and ${b.tag} stand ${apart ?? ''} apart: their holes need ${more ?? ''} more.`,
    };
  });
};
