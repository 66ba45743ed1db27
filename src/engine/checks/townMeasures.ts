import type { SitePoint } from '../../geometry/point.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import { infillWord } from '../../site/infillWord.ts';
import type { Site } from '../../site/site.ts';
import type { TownMeasure } from '../../site/townRule.ts';
import { barbedArms } from '../../trade/barbedWire.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { FlagPlace } from '../flag.ts';
import { clearPassage } from '../gate/clearPassage.ts';
import type { GateLayout, LineLayout } from '../layout.ts';
import type { Mend } from '../mend.ts';
import type { Post } from '../post.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { boundariesOf } from './boundariesOf.ts';
import { gateName, lineName, oneLine } from './names.ts';
import { postsByLine } from './postsByLine.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

/** A place where a plan does not keep a limit, and what it has there in words without a full stop. */
export interface TownFinding {
  readonly place: FlagPlace;
  readonly at: SitePoint;
  readonly has: string;
  readonly mend?: Mend;
}

/** A fence line that stands, with what it is built as. */
interface Stood {
  readonly laid: LineLayout;
  readonly line: FenceLine;
  readonly spec: FenceSpec;
  readonly name: string;
  readonly at: SitePoint;
}

type Compare = (limit: Inches, site: Site, laid: LaidLines) => readonly TownFinding[];

const say = (length: number, { lengths }: Site): string =>
  formatLength(inches(length), fineStyle(lengths));

const stoodOf = (site: Site, laid: LaidLines): Stood[] =>
  Object.values<LineLayout>(laid.lines).flatMap((own) => {
    const line = site.lines[own.id];
    const spec = line === undefined ? undefined : site.specs[line.spec];
    const at = own.legs[0]?.start;
    if (line === undefined || spec === undefined || at === undefined) return [];
    return [{ laid: own, line, spec, name: lineName(site, own.id), at }];
  });

const onLine = ({ laid, at, name }: Stood, has: string): TownFinding => ({
  place: { kind: 'line', id: laid.id },
  at,
  has: phrase`${name}: ${has}`,
});

/** Each line of which something in inches is told, where that is not as it should be. */
const perLine =
  (told: (stood: Stood, limit: Inches, site: Site) => string | null): Compare =>
  (limit, site, laid) =>
    stoodOf(site, laid).flatMap((stood) => {
      const has = told(stood, limit, site);
      return has === null ? [] : [onLine(stood, has)];
    });

const higher = ({ laid, spec }: Stood, limit: Inches, site: Site): string | null => {
  const wall = Math.max(0, ...laid.runs.map((run) => run.wall?.height ?? 0));
  const arms = spec.barbedWire === null ? 0 : barbedArms.reach;
  const high = spec.fabricHeight + wall + arms;
  if (high <= limit + slack) return null;
  const parts = [
    phrase`${infillWord(spec.infill)} ${say(spec.fabricHeight, site)} high`,
    ...(arms === 0
      ? []
      : [phrase`barbed wire to ${say(arms, site)} over it (${barbedArms.source.text})`]),
    ...(wall === 0 ? [] : [phrase`on a wall of ${say(wall, site)}`]),
  ];
  return parts.length === 1
    ? joined(parts, '')
    : phrase`${joined(parts, ', ')}: ${say(high, site)} in all`;
};

/** Posts of which something in inches is less than a limit, and the first of those with the least. */
const under = (posts: readonly Post[], limit: Inches, sizeOf: (post: Post) => number) => {
  const short = posts
    .map((post) => ({ post, size: sizeOf(post) }))
    .filter(({ size }) => size < limit - slack);
  const [first, ...rest] = short;
  if (first === undefined) return null;
  const least = rest.reduce((one, other) => (other.size < one.size ? other : one), first);
  return { ...least, count: short.length };
};

const nearBoundary: Compare = (limit, site, laid) => {
  const stood = stoodOf(site, laid);
  const boundaries = boundariesOf(site);
  const [first] = stood;
  if (boundaries.length === 0 && first !== undefined)
    return [{ ...onLine(first, ''), has: phrase`no boundary is drawn to compare the fence with` }];
  const posts = postsByLine(laid);
  return stood.flatMap((one) =>
    boundaries.flatMap(({ feature, off }) => {
      const near = under(posts.get(one.laid.id) ?? [], limit, ({ at }) => off(at));
      if (near === null) return [];
      const { post, size, count } = near;
      const stands = count === 1 ? phrase`1 post stands` : phrase`${count} posts stand`;
      const name = oneLine(feature.label) || phrase`the boundary`;
      const has = phrase`${stands} nearer to ${name}, post ${post.tag} at ${say(size, site)}`;
      return [{ ...onLine(one, has), at: post.at }];
    }),
  );
};

const shallowHoles: Compare = (limit, site, laid) => {
  const posts = postsByLine(laid);
  return stoodOf(site, laid).flatMap((one) => {
    const dug = (posts.get(one.laid.id) ?? []).filter(({ wall }) => wall === null);
    const shallow = under(dug, limit, ({ hole }) => hole.depth);
    if (shallow === null) return [];
    const { post, size, count } = shallow;
    const holes = count === 1 ? phrase`1 hole is` : phrase`${count} holes are`;
    const has = phrase`${holes} shallower, that of post ${post.tag} ${say(size, site)} deep`;
    const mend: Mend = { kind: 'deepen holes', spec: one.line.spec, depth: limit };
    return [{ ...onLine(one, has), at: post.at, mend }];
  });
};

const narrowPassages: Compare = (limit, site, laid) =>
  Object.values<GateLayout>(laid.gates).flatMap((layout) => {
    const gate = site.gates[layout.id];
    if (gate === undefined || layout.opening.target <= 0) return [];
    const { clear } = clearPassage(gate, layout);
    if (clear >= limit - slack) return [];
    const has = phrase`${gateName(site, layout.id)}: ${say(clear, site)} is clear when it is open`;
    return [{ place: { kind: 'gate', id: layout.id }, at: layout.middle, has }];
  });

/**
 * What in a plan does not keep a limit (inches) that a town sets, by what the limit is of; one finding for
 * each line, line and boundary, or gate. A wall under a fence and barbed wire over it count to its height;
 * barbed wire counts as beginning at the top of the fabric; a post stands where its centre is. A limit
 * that is met to within rounding is kept.
 */
export const townMeasures: Readonly<Record<TownMeasure, Compare>> = {
  'fence no higher than': perLine(higher),
  'pool barrier no lower than': perLine(({ line, spec }, limit, site) =>
    line.guards !== 'pool' || spec.fabricHeight >= limit - slack
      ? null
      : phrase`round a pool and ${say(spec.fabricHeight, site)} high`,
  ),
  'gap under fabric no more than': perLine(({ spec }, limit, site) =>
    spec.gapUnder <= limit + slack
      ? null
      : phrase`may have ${say(spec.gapUnder, site)} under its ${infillWord(spec.infill)}`,
  ),
  'fence no nearer the boundary than': nearBoundary,
  'holes no shallower than': shallowHoles,
  'barbed wire no lower than': perLine(({ spec }, limit, site) =>
    spec.barbedWire === null || spec.fabricHeight >= limit - slack
      ? null
      : phrase`barbed wire begins over ${infillWord(spec.infill)} ${say(spec.fabricHeight, site)} high`,
  ),
  'clear passage no less than': narrowPassages,
};
