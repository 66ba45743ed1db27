import type { FootingRule } from '../structure/footingRules.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { SpecId } from '../../site/ids.ts';
import { infillWord } from '../../site/infillWord.ts';
import type { Site } from '../../site/site.ts';
import { frostSource } from '../../trade/frost.ts';
import { mostOpenFrame, openFrameSource } from '../../trade/openFrames.ts';
import { bendingSource, windSource } from '../../trade/windTerms.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { shareText } from '../../units/shareText.ts';
import type { Flag } from '../flag.ts';
import type { Mend } from '../mend.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { firstLines } from '../structure/firstLines.ts';
import { deepest } from '../structure/poleFooting.ts';
import { isCompared } from '../structure/windOnPost.ts';
import { shortestBay } from '../structure/shortestBay.ts';
import { postStructures, type PostStructure } from '../structure/postStructures.ts';
import { asItIs, joined, phrase } from '../../phrases/phrase.ts';

/** A build where it stands for the first time, and what its posts are compared with. */
interface Stood {
  readonly id: SpecId;
  readonly label: string;
  /** What hangs between its posts. */
  readonly noun: string;
  readonly maxBay: Inches;
  /** Whether bays are not as short as the wind asks for already. */
  readonly mayShorten: boolean;
  readonly plant: (told: Pick<Flag, 'rule' | 'message' | 'mend'>) => Flag;
  readonly posts: readonly PostStructure[];
  readonly say: (length: Inches) => string;
  /** The same for what is thin. */
  readonly fine: (length: Inches) => string;
}

const bendRules = {
  'line post': 'posts bend in the wind',
  'terminal post': 'terminal posts bend in the wind',
  'gate post': 'gate posts bend in the wind',
} as const;

const oneOf = {
  'line post': phrase`line post`,
  'terminal post': phrase`terminal post`,
  'gate post': phrase`gate post`,
} as const;

const manyOf = {
  'line post': phrase`line posts`,
  'terminal post': phrase`terminal posts`,
  'gate post': phrase`gate posts`,
} as const;

const steelWords = { regular: phrase`regular`, 'high strength': phrase`high strength` } as const;

/** The worst of each use, the first where none is worse. */
const worstOfUses = <T extends Pick<PostStructure, 'use'>>(
  all: readonly T[],
  isWorse: (one: T, most: T) => boolean,
): T[] => {
  const worst = new Map<PostStructure['use'], T>();
  for (const one of all) {
    const most = worst.get(one.use);
    if (most === undefined || isWorse(one, most)) worst.set(one.use, one);
  }
  return [...worst.values()];
};

const square = ({ label, plant, posts }: Stood): Flag[] => {
  const found = posts.filter(({ wind }) => wind === 'square');
  if (found.length === 0) return [];
  const uses = joined([...new Set(found.map(({ use }) => manyOf[use]))], ', ');
  const message = phrase`${label}: square ${uses} are not compared with the wind, only round pipe is: they are for a licensed professional to say.`;
  return [plant({ rule: 'square posts in the wind', message })];
};

const solid = ({ label, noun, plant, posts }: Stood): Flag[] =>
  posts.some(({ wind }) => wind === 'too solid')
    ? [
        plant({
          rule: 'too solid for the table',
          message: phrase`${label}: ${noun} more than ${100 * mostOpenFrame} % solid is no open frame (${openFrameSource.text}): its wind is for a licensed professional to say.`,
        }),
      ]
    : [];

const bent = (
  { label, plant, say, fine, maxBay, mayShorten }: Stood,
  one: PostStructure,
): Flag[] => {
  const { wind, use, post, wide, pipe } = one;
  if (!isCompared(wind) || wind.bends <= wind.capacity) return [];
  const where = phrase`${label} in ${wind.nameWith(fine)}`;
  const bends = phrase`bend by ${shareText(wind.bends / wind.capacity)} of what ${asItIs(pipe.label)} of ${steelWords[wind.steel]} steel may bear`;
  const sources = phrase`${windSource.text}; ${bendingSource.text}`;
  if (use !== 'line post') {
    const message = phrase`${where}: ${oneOf[use]} ${post.tag}, that holds ${say(wide)} of it, would ${bends}: expected stronger pipe or less beside it (${sources}).`;
    return [plant({ rule: bendRules[use], message })];
  }
  const apart = phrase`${where}: line posts ${say(wide)} apart ${bends}`;
  if (wind.longest < shortestBay) {
    const message = phrase`${apart}; no bay is short enough for them: expected stronger posts (${sources}).`;
    return [plant({ rule: bendRules[use], message })];
  }
  const message = phrase`${apart}; expected bays of ${say(wind.longest)} at most, or stronger posts (${sources}).`;
  const mend =
    mayShorten && wide <= maxBay + slack ? { mend: { kind: 'bays by wind' as const } } : {};
  return [plant({ rule: bendRules[use], message, ...mend })];
};

/** Of the posts of each use the one that its wind bends by the largest share of what it may bear. */
const mostBent = (posts: readonly PostStructure[]): PostStructure[] => {
  const share = ({ wind }: PostStructure): number =>
    isCompared(wind) ? wind.bends / wind.capacity : 0;
  return worstOfUses(posts, (one, most) => share(one) > share(most) + 1e-9);
};

/** What one rule asks of a post whose hole is shallower; null depth for more than any. */
interface Short {
  readonly use: PostStructure['use'];
  readonly one: PostStructure;
  readonly asks: Inches | null;
  readonly source: string;
}

/** By how much a hole is short, inches. */
const missing = ({ one, asks }: Short): number =>
  asks === null ? Infinity : asks - one.post.hole.depth;

/** Every hole that is shallower than a rule asks. */
const shortBy = (posts: readonly PostStructure[], wanted: FootingRule): Short[] =>
  posts.flatMap((one): Short[] => {
    const row = one.footing.rows.find(({ rule }) => rule === wanted);
    if (row === undefined) return [];
    const { depth: asks, source } = row;
    return asks === null || asks > one.post.hole.depth + slack
      ? [{ use: one.use, one, asks, source }]
      : [];
  });

/** The one of each use that is the shortest. */
const shortest = (all: readonly Short[]): Short[] =>
  worstOfUses(all, (a, most) => missing(a) > missing(most) + slack);

/** Holes as deep as the most that is asked for, in whole inches; none where no depth does. */
const deeper = ({ id }: Stood, short: readonly Short[]): { readonly mend?: Mend } => {
  if (short.some(({ asks }) => asks === null)) return {};
  const depth = Math.max(...short.map(({ asks }) => asks ?? 0));
  return { mend: { kind: 'deepen holes', spec: id, depth: inches(Math.ceil(depth - slack)) } };
};

const aboveFrost = (stood: Stood): Flag[] => {
  const short = shortBy(stood.posts, 'frost');
  const [first] = shortest(short);
  if (first?.asks == null) return [];
  const message = phrase`${stood.label}: holes ${stood.say(first.one.post.hole.depth)} deep; frost asks for ${stood.say(first.asks)} (${frostSource.text}).`;
  return [stood.plant({ rule: 'holes above frost', message, ...deeper(stood, short) })];
};

const shallow = (stood: Stood): Flag[] => {
  const { label, plant, posts, say } = stood;
  const short = shortBy(posts, 'pole');
  const [first] = short;
  if (first === undefined) return [];
  const asked = shortest(short).map(
    ({ one: { use, post }, asks }) =>
      phrase`${oneOf[use]} holes ${say(post.hole.depth)} deep, asked ${asks === null ? phrase`more than ${say(deepest)}` : say(asks)}`,
  );
  const message = phrase`${label}: by the pole formula in ${first.one.lateral} psf a foot ${joined(asked, '; ')} (${first.source}).`;
  return [plant({ rule: 'holes shallow for the wind', message, ...deeper(stood, short) })];
};

/**
 * What wind, ice, frost and ground ask of the posts of each build, once at its first line; nothing where
 * none of it was told.
 */
export const checkStructure = (site: Site, laid: LaidLines): Flag[] => {
  const found = postStructures(site, laid);
  if (found.size === 0) return [];
  return [...firstLines(site, laid)].flatMap(([id, line]) => {
    const [spec, at] = [site.specs[id], laid.lines[line]?.legs[0]?.start];
    if (spec === undefined || at === undefined) return [];
    const stood: Stood = {
      id,
      label: asItIs(spec.label),
      noun: infillWord(spec.infill),
      maxBay: spec.maxBay,
      mayShorten: site.conditions.bays === 'by build',
      plant: (told) => ({ level: 'settle', place: { kind: 'line', id: line }, at, ...told }),
      posts: found.get(id) ?? [],
      say: (length) => formatLength(length, site.lengths),
      fine: (length) => formatLength(length, fineStyle(site.lengths)),
    };
    return [
      ...solid(stood),
      ...square(stood),
      ...mostBent(stood.posts).flatMap((one) => bent(stood, one)),
      ...aboveFrost(stood),
      ...shallow(stood),
    ];
  });
};
