import type { Run } from '../../engine/layout.ts';
import { isTerminal, type Post, type Posts } from '../../engine/post.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Atom, Text } from '../atom.ts';
import { circleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { labelAt } from '../lettering/label.ts';
import type { Lettered } from '../lettering/lettered.ts';
import type { Lettering } from '../lettering/lettering.ts';
import { textBox } from '../lettering/textBox.ts';
import { textWidth } from '../textWidth.ts';
import { tapeLevels } from './tapeLevels.ts';
import {
  backReadingsOf,
  readingsOf,
  stopsOf,
  type PieceStop,
  type TapePiece,
} from './tapePiece.ts';
import { xAt, type TapeReach } from './tapeReach.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const { tags, fence, bodyBottom, readings: hang } = tapeLevels;

/** Radius of hole and pipe on the strip, paper inches: it has no scale across the tape. */
const sizes = {
  terminal: { hole: 0.085, pipe: 0.05 },
  line: { hole: 0.06, pipe: 0.028 },
} as const;

const mark = (post: Post, x: number): Atom[] => {
  const { hole, pipe } = isTerminal(post) ? sizes.terminal : sizes.line;
  const at = { x, y: fence };
  const around = circleOutline(at, hole);
  return [
    {
      do: 'stroke',
      pen: { ink: isTerminal(post) ? 'post' : 'dimension', width: 0.01, dash: [] },
      outline: segmentsOutline([[at, { x, y: hang - 0.02 }]]),
    },
    { do: 'fill', ink: 'paper', opacity: 1, outline: around },
    {
      do: 'stroke',
      pen: { ink: 'post', width: 0.008, dash: [] },
      outline: around,
    },
    { do: 'fill', ink: 'post', opacity: 1, outline: circleOutline(at, pipe) },
  ];
};

/** The line from a post down through the tape. */
const lineBox = (x: number): OrientedBox<'paper'> => ({
  centre: { x, y: (fence + hang) / 2 },
  halfWidth: 0.02,
  halfHeight: (hang - fence) / 2,
  angle: radians(0),
});

/** Upright, read from the right, hanging from under the tape. */
const readingText = (text: string, x: number, post: Post): Text => ({
  do: 'text',
  text,
  at: { x, y: hang },
  size: 0.15,
  angle: radians(Math.PI / 2),
  align: 'right',
  baseline: 'middle',
  weight: isTerminal(post) ? 'bold' : 'regular',
  ink: 'text',
  halo: 'none',
});

/** A reading from the other end, lighter, in a row under the readings of the hooked tape. */
const backText = (text: string, x: number, y: number): Text => ({
  do: 'text',
  text,
  at: { x, y },
  size: 0.141,
  angle: radians(Math.PI / 2),
  align: 'right',
  baseline: 'middle',
  weight: 'regular',
  ink: 'dimension',
  halo: 'none',
});

/** Where a reading may stand: under its post, or beside that where the neighbour is close. */
const shifts = [0, 0.09, -0.09, 0.18, -0.18] as const;

const letterReading = (text: string, x: number, post: Post, room: Lettering): Lettered => {
  for (const shift of shifts) {
    const found = readingText(text, x + shift, post);
    const box = textBox(found);
    if (!room.isFree(box)) continue;
    room.take(box);
    const from = { x, y: bodyBottom };
    const lead: Atom = {
      do: 'stroke',
      pen: { ink: 'dimension', width: 0.006, dash: [] },
      outline: segmentsOutline([[from, { x: x + shift, y: hang - 0.01 }]]),
    };
    return { lines: shift === 0 ? [] : [lead], texts: [found], left: [] };
  }
  return { lines: [], texts: [], left: [phraseOf('tape')`${post.tag} at ${text}`] };
};

const letterBack = (text: Text, post: Post, room: Lettering): Lettered => {
  for (const shift of shifts) {
    const found = { ...text, at: { x: text.at.x + shift, y: text.at.y } };
    const box = textBox(found);
    if (!room.isFree(box)) continue;
    room.take(box);
    return { lines: [], texts: [found], left: [] };
  }
  return { lines: [], texts: [], left: [phrase`${post.tag} ${text.text} from the other end`] };
};

const letterTag = (post: Post, x: number, room: Lettering): Lettered => {
  const style = {
    text: post.tag,
    size: isTerminal(post) ? 0.16 : 0.141,
    weight: isTerminal(post) ? ('bold' as const) : ('regular' as const),
    ink: 'text' as const,
  };
  const label = labelAt(style, { x, y: tags }, radians(0));
  if (!room.isFree(label.box)) return { lines: [], texts: [], left: [post.tag] };
  room.take(label.box);
  return { lines: [], texts: label.texts, left: [] };
};

/** Terminal posts find their places first: their readings and tags matter most. */
const byRank =
  (posts: Posts) =>
  (a: PieceStop, b: PieceStop): number => {
    const rank = ({ post }: PieceStop): number => {
      const found = posts.get(post);
      return found !== undefined && isTerminal(found) ? 0 : 1;
    };
    return rank(a) - rank(b);
  };

/** Where the posts of a strip are lettered; `back` is where the readings from the other end hang, null for none. */
interface PostSheet {
  readonly posts: Posts;
  readonly style: LengthStyle;
  readonly room: Lettering;
  readonly back: number | null;
}

/** Paper inches between the readings of the hooked tape and those from the other end. */
const beforeBack = 0.1;

const longestOf = new WeakMap<Run, Map<string, number>>();

/** How long the longest reading of a piece is written, paper inches; remembered for its run. */
const longest = (piece: TapePiece, style: LengthStyle): number => {
  const { run, first, last, hook } = piece;
  const known = longestOf.get(run) ?? new Map<string, number>();
  longestOf.set(run, known);
  const key = `${hook} ${first} ${last} ${style.system} ${style.fraction}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const widths = [...readingsOf(piece, style).values()].map((reading) =>
    textWidth(formatLength(reading, style), 0.15, 'bold'),
  );
  const most = Math.max(0, ...widths);
  known.set(key, most);
  return most;
};

/** Where the longest of the readings ends that hang under a tape; paper inches from the top. */
export const deepest = (pieces: readonly TapePiece[], style: LengthStyle): number =>
  hang + pieces.reduce((most, piece) => Math.max(most, longest(piece, style)), 0);

/** Where the readings from the other end hang: under the longest of the others; paper inches. */
export const backLevel = (pieces: readonly TapePiece[], style: LengthStyle): number =>
  deepest(pieces, style) + beforeBack;

/**
 * The posts of a piece on the strip, each with its tag over the fence and, under the tape, what
 * the tape shows there, and where it is asked for under that what it shows from the other end. What
 * finds no room is left by tag and reading.
 */
export const tapePosts = (
  piece: TapePiece,
  reach: TapeReach,
  { posts, style, room, back }: PostSheet,
): Lettered => {
  const readings = readingsOf(piece, style);
  const backs = backReadingsOf(piece, style);
  const lettered = stopsOf(piece)
    .toSorted(byRank(posts))
    .flatMap(({ post: id, station }): Lettered[] => {
      const post = posts.get(id);
      if (post === undefined) return [];
      const x = xAt(reach, station);
      const text = formatLength(readings.get(id) ?? station, style);
      room.avoid(lineBox(x));
      const marks = { lines: mark(post, x), texts: [], left: [] };
      const own = [marks, letterReading(text, x, post, room), letterTag(post, x, room)];
      if (back === null) return own;
      const there = formatLength(backs.get(id) ?? station, style);
      return [...own, letterBack(backText(there, x, back), post, room)];
    });
  return {
    lines: lettered.flatMap(({ lines }) => lines),
    texts: lettered.flatMap(({ texts }) => texts),
    left: lettered.flatMap(({ left }) => left),
  };
};
