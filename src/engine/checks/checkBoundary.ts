import { slack } from '../../geometry/tolerance.ts';
import type { LineId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { Post } from '../post.ts';
import { digs } from '../wall/digs.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { boundariesOf } from './boundariesOf.ts';
import { lineName, oneLine } from './names.ts';
import { postsByLine } from './postsByLine.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A post nearer to a boundary than its hole, or the setback, allows. */
interface Near {
  readonly post: Post;
  readonly missing: number;
}

const worstOf = (near: readonly Near[]): Near | null =>
  near.reduce<Near | null>(
    (worst, one) => (one.missing > (worst?.missing ?? slack) ? one : worst),
    null,
  );

/**
 * Posts of each line whose holes reach over a boundary, and those that stand nearer to it than its
 * setback: one line for each fence line and boundary, with how many and the worst.
 */
export const checkBoundary = (site: Site, laid: LaidLines): Flag[] => {
  const boundaries = boundariesOf(site);
  if (boundaries.length === 0) return [];
  const say = (length: number) => formatLength(inches(length), fineStyle(site.lengths));
  const posts = postsByLine(laid);
  return (Object.keys(site.lines) as LineId[]).flatMap((line) => {
    const own = posts.get(line) ?? [];
    return boundaries.flatMap(({ feature, off: offIt }): Flag[] => {
      const name = oneLine(feature.label) || phrase`the boundary`;
      const told = (rule: string, near: readonly Near[], text: (worst: Near) => string): Flag[] => {
        const worst = worstOf(near);
        if (worst === null) return [];
        const { at } = worst.post;
        const place = { kind: 'line', id: line } as const;
        return [{ level: 'settle', rule, place, at, message: text(worst) }];
      };
      const off = own.map((post) => ({ post, off: offIt(post.at) }));
      const over = off
        .filter(({ post }) => digs(post.wall))
        .map(({ post, off: by }) => ({ post, missing: post.hole.diameter / 2 - by }));
      const close = off.map(({ post, off: by }) => ({ post, missing: feature.setback - by }));
      const count = (near: readonly Near[]) => near.filter(({ missing }) => missing > slack).length;
      const holes = count(over) === 1 ? phrase`1 hole reaches` : phrase`${count(over)} holes reach`;
      const stands =
        count(close) === 1 ? phrase`1 post stands` : phrase`${count(close)} posts stand`;
      return [
        ...told(
          'hole over the boundary',
          over,
          ({ post, missing }) =>
            phrase`${lineName(site, line)}: ${holes} over ${name}, that of post ${post.tag} by ${say(missing)}: expected all of a hole on one side, half its width inside at least.`,
        ),
        ...told(
          'nearer than the setback',
          close,
          ({ post, missing }) =>
            phrase`${lineName(site, line)}: ${stands} nearer to ${name} than its setback of ${say(feature.setback)}, post ${post.tag} by ${say(missing)}.`,
        ),
      ];
    });
  });
};
