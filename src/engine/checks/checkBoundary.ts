import { edges as edgesOf } from '../../geometry/polygon.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Feature } from '../../site/feature.ts';
import type { FeatureId, LineId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import { grouped } from '../load/grouped.ts';
import type { Post } from '../post.ts';
import { digs } from '../wall/digs.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { lineName, oneLine } from './names.ts';
import { postsInTurn } from './postsInTurn.ts';

type Boundary = Extract<Feature, { readonly kind: 'boundary' }>;

const sidesOf = (site: Site, { path, closed }: Boundary): Segment<'site'>[] => {
  const corners = verticesOf(path).flatMap(({ mark }): readonly SitePoint[] => {
    const at = site.marks[mark];
    return at === undefined ? [] : [at];
  });
  return closed ? edgesOf(corners) : edgesOf(corners).slice(0, -1);
};

/** A post nearer to a boundary than its hole, or the setback, allows. */
interface Near {
  readonly post: Post;
  readonly missing: number;
}

const nearest = (sides: readonly Segment<'site'>[], at: SitePoint): number =>
  Math.min(...sides.map((side) => nearestOnSegment(at, side).distance));

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
  const boundaries = (Object.entries(site.features) as [FeatureId, Feature][]).flatMap(
    ([id, feature]) =>
      feature.kind === 'boundary' ? [{ id, feature, sides: sidesOf(site, feature) }] : [],
  );
  if (boundaries.length === 0) return [];
  const say = (length: number) => formatLength(inches(length), fineStyle(site.lengths));
  const posts = new Map(
    grouped(postsInTurn(laid), ({ lines }) => lines[0] ?? '').map((own) => [own[0]?.lines[0], own]),
  );
  return (Object.keys(site.lines) as LineId[]).flatMap((line) => {
    const own = posts.get(line) ?? [];
    return boundaries.flatMap(({ feature, sides }): Flag[] => {
      const name = oneLine(feature.label) || 'the boundary';
      const told = (rule: string, near: readonly Near[], text: (worst: Near) => string): Flag[] => {
        const worst = worstOf(near);
        if (worst === null) return [];
        const { at } = worst.post;
        const place = { kind: 'line', id: line } as const;
        return [{ level: 'settle', rule, place, at, message: text(worst) }];
      };
      const off = own.map((post) => ({ post, off: nearest(sides, post.at) }));
      const over = off
        .filter(({ post }) => digs(post.wall))
        .map(({ post, off: by }) => ({ post, missing: post.hole.diameter / 2 - by }));
      const close = off.map(({ post, off: by }) => ({ post, missing: feature.setback - by }));
      const count = (near: readonly Near[]) => near.filter(({ missing }) => missing > slack).length;
      const holes = count(over) === 1 ? '1 hole reaches' : `${count(over)} holes reach`;
      const stands = count(close) === 1 ? '1 post stands' : `${count(close)} posts stand`;
      return [
        ...told(
          'hole over the boundary',
          over,
          ({ post, missing }) =>
            `${lineName(site, line)}: ${holes} over ${name}, that of post ${post.tag} by ${say(missing)}: expected all of a hole on one side, half its width inside at least.`,
        ),
        ...told(
          'nearer than the setback',
          close,
          ({ post, missing }) =>
            `${lineName(site, line)}: ${stands} nearer to ${name} than its setback of ${say(feature.setback)}, post ${post.tag} by ${say(missing)}.`,
        ),
      ];
    });
  });
};
