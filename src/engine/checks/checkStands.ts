import { expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import type { Flag } from '../flag.ts';
import { standsByGate, type Post } from '../post.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { dugBy } from './dugBy.ts';
import { holesMissing } from './holesMissing.ts';
import { isWithin } from './isWithin.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Holes are looked for within this many inches. */
const widest = 120;

const squareOf = (x: number, y: number): string =>
  `${Math.floor(x / widest)} ${Math.floor(y / widest)}`;

const squaresRound = ({ at: { x, y } }: Post): string[] =>
  [-widest, 0, widest].flatMap((across) =>
    [-widest, 0, widest].map((up) => squareOf(x + across, y + up)),
  );

const bySquare = (posts: readonly Post[]): Map<string, Post[]> => {
  const squares = new Map<string, Post[]>();
  for (const post of posts) {
    const key = squareOf(post.at.x, post.at.y);
    const same = squares.get(key);
    if (same === undefined) squares.set(key, [post]);
    else same.push(post);
  }
  return squares;
};

const called: Readonly<Partial<Record<Post['kind'], string>>> = {
  roller: phrase`roller post`,
  'hold-open': phrase`hold-open post`,
  stop: phrase`centre stop`,
};

/** The posts of the runs that come near to any of some posts. */
const postsNear = ({ met, tagged }: LaidLines, stands: readonly Post[], carry: Carry): Post[] => {
  const known = carry.shelf<Bounds>('where a run can reach a post');
  return met.flatMap(({ key, posts }, n) => {
    const reach = known.take(key, [posts], () => expandBounds(dugBy(posts).bounds, 2 * widest));
    return stands.some((stand) => isWithin(stand, reach)) ? (tagged[n] ?? []) : [];
  });
};

/** Roller posts, hold-open posts and stops between leaves of which the hole meets that of a post of the fence or another gate. */
export const checkStands = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  const { stands } = laid;
  if (stands.length === 0) return [];
  const posts = [...postsNear(laid, stands, carry), ...stands];
  const squares = bySquare(posts);
  return stands.flatMap((stand): Flag[] => {
    const [gate] = stand.gates;
    const worst = squaresRound(stand)
      .flatMap((square) => squares.get(square) ?? [])
      // two stands are told of once
      .filter((post) => post.id !== stand.id && (!standsByGate(post) || stand.id < post.id))
      .map((post) => ({ post, by: holesMissing(stand, post) }))
      .reduce<{ post: Post | null; by: number }>((most, one) => (one.by > most.by ? one : most), {
        post: null,
        by: slack,
      });
    if (worst.post === null || gate === undefined) return [];
    const by = formatLength(inches(worst.by), fineStyle(site.lengths));
    return [
      {
        level: 'settle',
        rule: 'no room for the posts of a gate',
        place: { kind: 'gate', id: gate },
        at: midpoint(stand.at, worst.post.at),
        message: phrase`${gateName(site, gate)}: the hole of its ${called[stand.kind] ?? phrase`post`} ${stand.tag} needs ${by} more from that of post ${worst.post.tag}: move one.`,
      },
    ];
  });
};
