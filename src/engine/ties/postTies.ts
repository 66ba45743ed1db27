import { distance } from '../../geometry/distance.ts';
import type { Polygon } from '../../geometry/polygon.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { MarkId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Layout } from '../layout.ts';
import { isTerminal, type PostId } from '../post.ts';
import { longerOnSlope } from './longerOnSlope.ts';
import type { Reference } from './reference.ts';
import { referencesOf } from './referencesOf.ts';
import { sketchedPosts } from './sketchedPosts.ts';
import { buildingsOf, tapeSight } from './tapeSight.ts';
import { twoTapes, type TwoTapes } from './twoTapes.ts';
import { wallOffset, type Edge, type WallOffset } from './wallOffset.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How a terminal post is found from what is on site before it. */
export interface PostTie {
  readonly post: PostId;
  readonly tapes: TwoTapes | null;
  readonly offset: WallOffset | null;
  /** It stands where it was sketched: no reading holds it, though others were measured. */
  readonly sketched: boolean;
  /** How much more the longest difference is along sloping ground than level, inches; 0 on level ground, null for not known. */
  readonly onSlope: Inches | null;
  /** Where nothing holds it: why, and what would help, in one line; else null. */
  readonly lacks: string | null;
}

/** So many marks, the nearest, are looked at for one post. */
const mostLooked = 60;
const mostTried = 16;

/** Walls and legs of boundaries whose two ends are marks to tape from. */
const edgesOf = (site: Site, references: readonly Reference[]): Edge[] => {
  const byMark = new Map<MarkId, Reference>(references.map((one) => [one.mark, one]));
  return Object.values<Feature>(site.features).flatMap((feature): Edge[] => {
    const of = feature.kind;
    if (of !== 'building' && of !== 'boundary') return [];
    const marks = verticesOf(feature.path).map(({ mark }) => mark);
    const closed = of === 'building' || ('closed' in feature && feature.closed);
    return marks.flatMap((mark, n): Edge[] => {
      const next = marks[n + 1] ?? (closed && marks.length > 2 ? marks[0] : undefined);
      const [start, end] = [byMark.get(mark), next === undefined ? undefined : byMark.get(next)];
      return start === undefined || end === undefined ? [] : [{ of, start, end }];
    });
  });
};

/** The nearest marks from which a tape can be pulled straight to a place. */
const inSight = (
  at: SitePoint,
  references: readonly Reference[],
  buildings: readonly Polygon<'site'>[],
): Reference[] =>
  references
    .map((one) => ({ one, away: distance(one.at, at) }))
    .toSorted((a, b) => a.away - b.away)
    .slice(0, mostLooked)
    .filter(({ one }) => tapeSight(buildings, one.at, at))
    .slice(0, mostTried)
    .map(({ one }) => one);

const help = phrase`draw the corners of a building, or put named marks on two stakes or pins and tape them`;

const whyNone = (seen: readonly Reference[]): string => {
  const [only] = seen;
  if (only === undefined) return phrase`nothing on site is in sight of it: ${help}`;
  if (seen.length === 1) return phrase`only ${only.name} is in sight of it: ${help}`;
  return phrase`tapes from the ${seen.length} marks in sight of it cross too flat: one more mark off their line would help`;
};

const longest = (site: Layout['ground'], at: SitePoint, tapes: TwoTapes | null): Inches | null => {
  const own =
    tapes === null ? [] : [tapes.first, tapes.second, ...(tapes.check ? [tapes.check] : [])];
  const longer = own.map(({ from }) => longerOnSlope(site, from.at, at));
  const known = longer.filter((one) => one !== null);
  return known.length < longer.length ? null : inches(Math.max(0, ...known));
};

/**
 * For every terminal post, in the order of the posts, the two tapes and the offset by which it is
 * found from marks that are on site before the fence; all distances level, to the middle of the post.
 */
export const postTies = (site: Site, layout: Layout): readonly PostTie[] => {
  const references = referencesOf(site, layout);
  const edges = edgesOf(site, references);
  const buildings = buildingsOf(site);
  const sketched = sketchedPosts(site, layout);
  return [...layout.posts.values()].filter(isTerminal).map(({ id, at }) => {
    const seen = inSight(at, references, buildings);
    const tapes = twoTapes(at, seen, site);
    const offset = wallOffset(at, edges, site.lengths);
    return {
      post: id,
      tapes,
      offset,
      sketched: sketched.has(id),
      onSlope: longest(layout.ground, at, tapes),
      lacks: tapes === null && offset === null ? whyNone(seen) : null,
    };
  });
};
