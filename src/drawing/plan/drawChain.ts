import type { Layout, Run, Space } from '../../engine/layout.ts';
import { tapeReadings } from '../../engine/posts/tapeReadings.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { formatLength } from '../../units/formatLength.ts';
import { sum, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { ChainGroup, Primitive } from '../primitive.ts';
import { drawChord } from './drawChord.ts';
import { runName } from './runName.ts';

/** How the chain of a run is written. */
export interface ChainStyle {
  readonly hook: 'start' | 'end';
  readonly style: LengthStyle;
  /** Paper inches to the left of the run; negative to the right. */
  readonly off: number;
  /** Printed tapes are named where the pieces find no room. */
  readonly tapes?: 'printed' | undefined;
}

/** One piece of a chain: how long it reads, and the stretch of fence that it is a bay of. */
interface Piece {
  readonly length: Inches;
  readonly stretch: number | null;
}

const stretchOf = (space: Space | undefined): number | null =>
  space?.kind === 'bay' ? space.stretch : null;

/** Points and pieces from the hook on; a mark that an end post stands off is a point too. */
const chainOf = (run: Run, layout: Layout, { hook, style }: ChainStyle) => {
  const { posts, spaces, lead, tail } = tapeReadings(run, hook, style);
  const [near, far] = hook === 'start' ? [run.start, run.end] : [run.end, run.start];
  const between = hook === 'start' ? run.spaces : run.spaces.toReversed();
  const bare = (length: Inches): Piece[] => (length === 0 ? [] : [{ length, stretch: null }]);
  const points: SitePoint[] = [
    ...(lead === 0 ? [] : [near]),
    ...posts.flatMap(({ post }) => layout.posts[post]?.at ?? []),
    ...(tail === 0 ? [] : [far]),
  ];
  const bays = spaces.map((length, n): Piece => ({ length, stretch: stretchOf(between[n]) }));
  return { points, pieces: [...bare(lead), ...bays, ...bare(tail)] };
};

const groupText = (lengths: readonly Inches[], style: LengthStyle): string => {
  const written = new Set(lengths.map((length) => formatLength(length, style)));
  const [each] = written;
  const total = formatLength(sum(lengths), style);
  return written.size === 1
    ? `${lengths.length} bays at ${each} = ${total}`
    : `${lengths.length} bays, together ${total}`;
};

/** Where the bays of one stretch that begin at a piece end; the next piece where it is no bay. */
const endOfStretch = (pieces: readonly Piece[], from: number): number => {
  const stretch = pieces[from]?.stretch ?? null;
  if (stretch === null) return from + 1;
  const other = pieces.findIndex((piece, n) => n > from && piece.stretch !== stretch);
  return other < 0 ? pieces.length : other;
};

/** Neighbouring bays of one stretch, to be written as one where they do not fit singly. */
const groupsOf = (pieces: readonly Piece[], style: LengthStyle): ChainGroup[] => {
  const groups: ChainGroup[] = [];
  let from = 0;
  while (from < pieces.length) {
    const to = endOfStretch(pieces, from);
    const lengths = pieces.slice(from, to).map(({ length }) => length);
    if (to - from > 1) groups.push({ from, to, text: groupText(lengths, style) });
    from = to;
  }
  return groups;
};

/**
 * The dimension chain of a run as its tape reads: from post to post, centre to centre, and the
 * total. The readings are rounded one by one and each piece is the difference of two of them, so
 * that the chain adds up whatever it is written in. A curve has its chord instead: lengths along it have
 * no straight chain. None for a run without two posts.
 */
export const drawChain = (run: Run, layout: Layout, how: ChainStyle): readonly Primitive[] => {
  if (run.bow !== 0) return drawChord(run, layout, how);
  const { style, off, hook, tapes } = how;
  const { points, pieces } = chainOf(run, layout, how);
  if (pieces.length === 0 || points.length !== pieces.length + 1) return [];
  const texts = pieces.map(({ length }) => formatLength(length, style));
  const name = runName(run, layout);
  const whole = formatLength(sum(pieces.map(({ length }) => length)), style);
  return [
    {
      kind: 'dimension chain',
      points,
      texts,
      total: texts.length > 1 ? whole : null,
      // from the hook at the end the chain runs the other way
      off: hook === 'start' ? off : -off,
      groups: groupsOf(pieces, style),
      name,
      ...(tapes === undefined ? {} : { elsewhere: `see tape ${name}` }),
    },
  ];
};
