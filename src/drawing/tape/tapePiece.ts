import type { Run, Space } from '../../engine/layout.ts';
import type { PostId } from '../../engine/post.ts';
import { tapeReadings } from '../../engine/posts/tapeReadings.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

/** A run, or a part of one between two of its posts, with the end at which the tape is hooked. */
export interface TapePiece {
  readonly run: Run;
  readonly hook: 'start' | 'end';
  /** The first and the last post shown, by their place in the run. */
  readonly first: number;
  readonly last: number;
}

/** The whole of a run. */
export const wholeRun = (run: Run, hook: 'start' | 'end'): TapePiece => ({
  run,
  hook,
  first: 0,
  last: run.posts.length - 1,
});

/** Where a piece begins and ends, in stations of its run: the marks themselves at the run's ends. */
export const spanOf = ({ run, first, last }: TapePiece): { from: Inches; to: Inches } => ({
  from: inches(first === 0 ? 0 : (run.posts[first]?.station ?? 0)),
  to: inches(last >= run.posts.length - 1 ? run.length : (run.posts[last]?.station ?? run.length)),
});

/** The length of a piece in inches. */
export const lengthOf = (piece: TapePiece): number => {
  const { from, to } = spanOf(piece);
  return to - from;
};

/** A post of a piece, and what lies between it and the next one shown. */
export interface PieceStop {
  readonly post: PostId;
  readonly station: Inches;
  readonly next: Space | null;
}

/** The posts of a piece, in rising stations. */
export const stopsOf = ({ run, first, last }: TapePiece): PieceStop[] =>
  run.posts.slice(first, last + 1).map(({ post, station }, n) => ({
    post,
    station,
    next: first + n < last ? (run.spaces[first + n] ?? null) : null,
  }));

interface RunReadings {
  readonly hook: TapePiece['hook'];
  readonly style: LengthStyle;
  readonly there: ReadonlyMap<PostId, Inches>;
  readonly back: ReadonlyMap<PostId, Inches>;
}

/** The readings of runs as they were last asked for: every piece of a run asks for all of them. */
const asked = new WeakMap<Run, RunReadings>();

const runReadings = ({ run, hook }: TapePiece, style: LengthStyle): RunReadings => {
  const known = asked.get(run);
  if (known !== undefined && known.hook === hook && known.style === style) return known;
  const { posts } = tapeReadings(run, hook, style);
  const there = new Map(posts.map(({ post, reading }) => [post, reading]));
  const back = new Map(posts.map((one) => [one.post, one.back]));
  const readings = { hook, style, there, back };
  asked.set(run, readings);
  return readings;
};

/** What the tape shows at each post of the run that a piece is of, as the sheet prints it. */
export const readingsOf = (piece: TapePiece, style: LengthStyle): ReadonlyMap<PostId, Inches> =>
  runReadings(piece, style).there;

/** The same by a tape that is hooked at the other end of the run. */
export const backReadingsOf = (piece: TapePiece, style: LengthStyle): ReadonlyMap<PostId, Inches> =>
  runReadings(piece, style).back;

/** Where the tape of a run is hooked, as a station: its start, or its end. */
export const hookStation = ({ run, hook }: TapePiece): Inches =>
  inches(hook === 'start' ? 0 : run.length);
