import type { Layout, Run } from '../../engine/layout.ts';
import { isTerminal, type PostId } from '../../engine/post.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import { principalAngle } from '../../geometry/principalAngle.ts';
import { trackBearing, trackLength } from '../../geometry/track.ts';
import type { GateId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { KeepOut } from '../../engine/keepOut/keepOut.ts';
import { keepOutsOf } from '../../engine/keepOut/keepOutsOf.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Atom } from '../atom.ts';
import { breaksFor, brokenAt } from '../explode/brokenAt.ts';
import { polylineOutline } from '../explode/polylineOutline.ts';
import { LetteredBefore } from '../lettering/letteredBefore.ts';
import { makeLettering } from '../lettering/lettering.ts';
import type { Lettered } from '../lettering/lettered.ts';
import { textBox } from '../lettering/textBox.ts';
import { infillOn } from '../plan/infillOn.ts';
import { closedSpans, type ClosedSpan } from './closedSpans.ts';
import { heightSpans } from './heightSpans.ts';
import { tapeBody } from './tapeBody.ts';
import { tapeClosed } from './tapeClosed.ts';
import { tapeLevels } from './tapeLevels.ts';
import { lengthOf, spanOf, stopsOf, type TapePiece } from './tapePiece.ts';
import { backLevel, deepest, tapePosts } from './tapePosts.ts';
import { tapeProfile, type TapeProfile } from './tapeProfile.ts';
import { xAt, type TapeReach } from './tapeReach.ts';
import { tapeSpaces, type TapeSheet } from './tapeSpaces.ts';

/** Room at both ends and between two pieces that meet at a corner, paper inches. */
export const tapeMargin = 0.35;
export const tapeFold = 0.42;
/** From the lowest reading to a profile under it, paper inches. */
const beforeProfile = 0.1;

export interface TapeOptions {
  /** Paper inches that the strip should fill. */
  readonly width: number;
  readonly style: LengthStyle;
  /** Paper inches for an inch of tape, at least; the strip grows wider than asked for if need be. */
  readonly leastScale?: number;
  /** The same, at most; the strip stays shorter than asked for if need be. */
  readonly mostScale?: number;
  /** Paper inches that heights of the ground may take under the strip; no profile unless said. */
  readonly profile?: number;
  /** Only what lies between these places is drawn, paper inches from the left; all of it unless said. */
  readonly seen?: { readonly from: number; readonly to: number };
  /** Whether what a tape reads from the other end stands under the readings; it does not unless said. */
  readonly otherEnd?: 'shown';
  /** What was lettered of strips of a line before: what does not differ is taken over, the very same atoms. */
  readonly before?: LetteredBefore;
}

/** A strip as drawn, and where on it everything stands, so that a hand can take hold of it. */
export interface TapeStrip {
  readonly atoms: readonly Atom[];
  readonly width: number;
  readonly height: number;
  readonly reaches: readonly TapeReach[];
  readonly posts: readonly { readonly post: PostId; readonly run: Run['id']; readonly x: number }[];
  /** From the centre of one gate post to that of the other. */
  readonly gates: readonly {
    readonly gate: GateId;
    readonly run: Run['id'];
    readonly from: number;
    readonly to: number;
  }[];
  /** Ground in which no hole may be dug or no high fence stand, by what it is called; paper inches from the left. */
  readonly closed: readonly { readonly name: string; readonly from: number; readonly to: number }[];
  /** Null where none is asked for, or nothing is known of the ground. */
  readonly profile: Omit<TapeProfile, 'atoms'> | null;
  /** Texts for which there was no room. */
  readonly left: readonly string[];
}

/** Pieces one after the other from the left, at one scale. */
const reachesOf = (
  pieces: readonly TapePiece[],
  { width, leastScale = 0, mostScale = Infinity }: TapeOptions,
): TapeReach[] => {
  const length = pieces.reduce((so, piece) => so + lengthOf(piece), 0);
  const room = width - 2 * tapeMargin - tapeFold * Math.max(0, pieces.length - 1);
  const scale = Math.max(leastScale, 1e-6, Math.min(mostScale, length > 0 ? room / length : 0));
  let x = tapeMargin;
  return pieces.map((piece) => {
    const reach = { run: piece.run.id, ...spanOf(piece), x, scale };
    x += lengthOf(piece) * scale + tapeFold;
    return reach;
  });
};

/** Between two pieces: the way the fence turns there, as seen from above. */
const foldSign = (before: TapeReach, turn: number): Atom => {
  const x = xAt(before, before.to) + tapeFold / 2;
  const y = (tapeLevels.bodyTop + tapeLevels.bodyBottom) / 2;
  const arm = 0.12;
  const bend = Math.max(-2.6, Math.min(2.6, turn));
  return {
    do: 'stroke',
    pen: { ink: 'line', width: 0.022, dash: [] },
    outline: polylineOutline(
      [
        { x: x - arm, y },
        { x, y },
        { x: x + arm * Math.cos(bend), y: y - arm * Math.sin(bend) },
      ],
      false,
    ),
  };
};

type Places = Pick<TapeStrip, 'posts' | 'gates'>;

interface Placed extends Places {
  readonly piece: TapePiece;
  readonly reach: TapeReach;
}

/** Where all stands of runs that were placed last, remembered: most of a line stays where it is. */
const placed = new WeakMap<Run, Placed>();

const isPlaced = ({ piece, reach }: Placed, now: TapePiece, there: TapeReach): boolean =>
  piece.first === now.first &&
  piece.last === now.last &&
  reach.x === there.x &&
  reach.scale === there.scale;

const placesOf = (piece: TapePiece, reach: TapeReach): Places => {
  const known = placed.get(piece.run);
  if (known !== undefined && isPlaced(known, piece, reach)) return known;
  const { run } = reach;
  const stops = stopsOf(piece).map((stop) => ({ ...stop, x: xAt(reach, stop.station) }));
  const now = {
    piece,
    reach,
    posts: stops.map(({ post, x }) => ({ post, run, x })),
    gates: stops.flatMap(({ next, x, station }) =>
      next?.kind === 'gate'
        ? [{ gate: next.gate, run, from: x, to: xAt(reach, station + next.length) }]
        : [],
    ),
  };
  placed.set(piece.run, now);
  return now;
};

const places = (pieces: readonly TapePiece[], reaches: readonly TapeReach[]): Places => {
  const all = pieces.flatMap((piece, n) => {
    const reach = reaches[n];
    return reach === undefined ? [] : [placesOf(piece, reach)];
  });
  return {
    posts: all.flatMap(({ posts }) => posts),
    gates: all.flatMap(({ gates }) => gates),
  };
};

/** Whether anything of a piece lies where the strip is seen. */
const isSeen = (reach: TapeReach, { seen }: TapeOptions): boolean =>
  seen === undefined ||
  (reach.x - tapeFold <= seen.to && xAt(reach, reach.to) + tapeFold >= seen.from);

/** The lowest point that a text of the strip reaches, paper inches from the top. */
const depthOf = (atoms: readonly Atom[]): number =>
  Math.max(
    tapeLevels.readings,
    ...atoms.flatMap((atom) => {
      if (atom.do !== 'text' || atom.angle === 0) return [];
      const { centre, halfWidth } = textBox(atom);
      return [centre.y + halfWidth];
    }),
  );

/** A piece of a run where it lies on the strip, and the ground in it that is closed to holes or to high fence. */
interface Shown {
  readonly piece: TapePiece;
  readonly reach: TapeReach;
  readonly closed: readonly ClosedSpan[];
}

/** Keep-outs of sites, remembered: all strips of a set are of one. */
const keptOut = new WeakMap<Site, readonly KeepOut[]>();

const keepOutsIn = (site: Site): readonly KeepOut[] => {
  const keepOuts = keptOut.get(site) ?? keepOutsOf(site);
  keptOut.set(site, keepOuts);
  return keepOuts;
};

const shownOf = (
  { site, layout }: Pick<TapeSheet, 'site' | 'layout'>,
  pieces: readonly TapePiece[],
  reaches: readonly TapeReach[],
  options: TapeOptions,
): Shown[] => {
  const sources = { site, layout, keepOuts: keepOutsIn(site) };
  return pieces.flatMap((piece, n) => {
    const reach = reaches[n];
    if (reach === undefined || !isSeen(reach, options)) return [];
    const spans = [...closedSpans(piece.run, sources), ...heightSpans(piece.run, site)];
    const closed = spans.flatMap((span) => {
      const [from, to] = [Math.max(span.from, reach.from), Math.min(span.to, reach.to)];
      return from < to ? [{ ...span, from: inches(from), to: inches(to) }] : [];
    });
    return [{ piece, reach, closed }];
  });
};

/** The boxes of all that is written. */
const boxesOf = (drawn: readonly Lettered[]): OrientedBox<'paper'>[] =>
  drawn
    .flatMap(({ lines, texts }) => [...lines, ...texts])
    .flatMap((atom) => (atom.do === 'text' ? [textBox(atom)] : []));

/** What follows what is drawn of a piece, besides where there is room. */
const followsFrom = (
  { run, hook, first, last }: TapePiece,
  { x, scale, from, to }: TapeReach,
  { site, layout, style, width }: TapeSheet,
  back: number | null,
): readonly unknown[] => [
  run,
  hook,
  first,
  last,
  x,
  scale,
  from,
  to,
  style,
  width,
  back,
  infillOn(site, run.line),
  // all that is drawn of a post besides its station
  ...run.posts.flatMap(({ post: id }) => {
    const post = layout.posts.get(id);
    return post === undefined ? [null] : [post.tag, isTerminal(post)];
  }),
  ...run.spaces.flatMap((space) =>
    space.kind === 'gate' ? [layout.gates[space.gate], site.gates[space.gate]] : [],
  ),
];

/** Tape, posts and spaces of a piece. */
const partOf = (piece: TapePiece, reach: TapeReach, sheet: TapeSheet, back: number | null) => {
  const { layout, style, room } = sheet;
  const posts = tapePosts(piece, reach, { posts: layout.posts, style, room, back });
  const spaces = tapeSpaces(piece, reach, sheet);
  // last, since a number that a post's line would cut is not written
  const body = tapeBody(piece, reach, style.system, room);
  return { body: { lines: body, texts: [], left: [] }, spaces, posts };
};

/**
 * Tape, posts and spaces of every piece, and what is closed in it, its lines broken for letters; what lies
 * on top comes last.
 */
const drawnOf = (
  shown: readonly Shown[],
  sheet: TapeSheet,
  back: number | null,
  before: LetteredBefore,
): Lettered[] => {
  const { style, room } = sheet;
  const letter = before.begin(room);
  const parts = shown.map(({ piece, reach }) =>
    letter(`${piece.run.id} ${piece.first}`, followsFrom(piece, reach, sheet, back), (own) =>
      partOf(piece, reach, { ...sheet, room: own }, back),
    ),
  );
  // after all openings, whose names must not be lost
  const closed = shown.map(({ piece, reach, closed: spans }) =>
    spans.map((span) => tapeClosed(piece, reach, span, { style, room })),
  );
  const written = parts.flatMap(({ body, spaces, posts }) => [body, spaces, posts]);
  const hatched = closed.flat();
  // nothing but hatching is broken for letters
  const breaks = breaksFor(hatched.length === 0 ? [] : boxesOf([...written, ...hatched]));
  return parts.flatMap(({ body, spaces, posts }, n) => [
    body,
    ...(closed[n] ?? []).map((one) => ({ ...one, lines: brokenAt(one.lines, breaks) })),
    spaces,
    posts,
  ]);
};

/**
 * Pieces of fence unrolled straight, as a steel tape with its readings: posts are marks with their
 * tags, openings are gaps with the width to hold, corners are folds that show the way the fence
 * turns, ground without holes and ground with a height limit are hatched, and a claw stands where the tape is hooked; where asked
 * for, the ground under them is drawn below. No pieces make an empty strip.
 */
export const tapeStrip = (
  site: Site,
  layout: Layout,
  pieces: readonly TapePiece[],
  options: TapeOptions,
): TapeStrip => {
  const { style, profile: most, otherEnd, seen, before: known = new LetteredBefore() } = options;
  const reaches = reachesOf(pieces, options);
  const shown = shownOf({ site, layout }, pieces, reaches, options);
  const back = otherEnd === 'shown' ? backLevel(pieces, style) : null;
  const last = reaches.at(-1);
  const width = last === undefined ? options.width : xAt(last, last.to) + tapeMargin;
  const room = makeLettering(null, []);
  const across = Math.max(width, options.width);
  const drawn = drawnOf(shown, { site, layout, style, room, width: across }, back, known);
  const folds = reaches.slice(1).flatMap((_, n) => {
    const [before, a, b] = [reaches[n], pieces[n], pieces[n + 1]];
    if (before === undefined || a === undefined || b === undefined) return [];
    if (!isSeen(before, options)) return [];
    return [
      foldSign(
        before,
        principalAngle(trackBearing(b.run, 0) - trackBearing(a.run, trackLength(a.run))),
      ),
    ];
  });
  const atoms = [
    ...drawn.flatMap(({ lines }) => lines),
    ...folds,
    ...drawn.flatMap(({ texts }) => texts),
  ];
  // as high as with all of it, so that it keeps its height while it is scrolled
  const depth = Math.max(depthOf(atoms), seen === undefined ? 0 : deepest(pieces, style));
  const under = { pieces, reaches, posts: layout.posts, style };
  const place = { left: tapeMargin, top: depth + beforeProfile, width: width - 2 * tapeMargin };
  const profile = most === undefined ? null : tapeProfile(under, { ...place, most });
  return {
    atoms: [...atoms, ...(profile?.atoms ?? [])],
    width,
    height: (profile?.bottom ?? depth) + 0.08,
    reaches,
    ...places(pieces, reaches),
    closed: shown.flatMap(({ reach, closed }) =>
      closed.map(({ name, from, to }) => ({ name, from: xAt(reach, from), to: xAt(reach, to) })),
    ),
    profile,
    left: drawn.flatMap(({ left }) => left),
  };
};
