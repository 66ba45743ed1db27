import { slack } from '../../geometry/tolerance.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { Post } from '../post.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { postsInTurn } from './postsInTurn.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

/** Posts of one line whose holes reach equally far into the foundations that their fence ends at. */
interface Reach {
  readonly posts: Post[];
  readonly toe: FenceSpec['foundationToe'];
  readonly gap: number;
  readonly by: number;
}

const reachesOf = (site: Site, laid: LaidLines): Reach[] => {
  const reaches = new Map<string, Reach>();
  for (const post of postsInTurn(laid)) {
    if (post.kind !== 'wall' || post.wall !== null) continue;
    const line = post.lines[0] ?? 'line:';
    const spec = site.specs[site.lines[line]?.spec ?? 'spec:'];
    if (spec === undefined) continue;
    const { foundationToe: toe, wallGap: gap } = spec;
    const by = post.hole.diameter / 2 + (toe ?? 0) - gap - post.od / 2;
    if (by <= slack) continue;
    const key = `${line} ${by}`;
    const known = reaches.get(key);
    if (known === undefined) reaches.set(key, { posts: [post], toe, gap, by });
    else known.posts.push(post);
  }
  return [...reaches.values()];
};

/**
 * Posts that end a fence at a wall whose holes reach into its foundation: under its face by as much as
 * the spec says that foundations reach out, or under the face itself where nobody has said. Those of
 * one line that reach equally far are told at once.
 */
export const checkFoundations = (site: Site, laid: LaidLines): Flag[] => {
  if (!laid.seated.some(({ from, to }) => from.wall || to.wall)) return [];
  const say = (length: number) => formatLength(inches(length), fineStyle(site.lengths));
  return reachesOf(site, laid).flatMap(({ posts, toe, gap, by }): Flag[] => {
    const [first] = posts;
    if (first === undefined) return [];
    const tags = joined(
      posts.map(({ tag }) => tag),
      phrase` and `,
    );
    const holes =
      posts.length === 1
        ? phrase`The hole of post ${tags} reaches`
        : phrase`The holes of posts ${tags} reach`;
    const into =
      toe === null ? phrase`under the face of the wall` : phrase`into the foundation of the wall`;
    const unknown = toe === null ? phrase` Find out how far the foundation reaches out.` : '';
    return [
      {
        level: toe === null ? 'caution' : 'settle',
        rule: 'hole at a foundation',
        place: { kind: 'mark', id: first.id.slice('post:'.length) as `mark:${string}` },
        at: first.at,
        message: phrase`${holes} ${say(by)} ${into}: expected it clear, with the post ${say(gap + by)} off the wall, or dug by hand beside the foundation.${unknown}`,
      },
    ];
  });
};
