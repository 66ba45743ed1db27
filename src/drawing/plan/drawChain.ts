import type { Layout, Run } from '../../engine/layout.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { spot } from '../../geometry/tolerance.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { ChainGroup, Primitive } from '../primitive.ts';
import { readingAt } from './readingAt.ts';
import { runName } from './runName.ts';

/** How the chain of a run is written. */
export interface ChainStyle {
  readonly hook: 'start' | 'end';
  readonly style: LengthStyle;
  /** Paper inches to the left of the run; negative to the right. */
  readonly off: number;
}

/** A place that a chain ticks: where it is, what the tape shows there, and what follows it. */
interface Stop {
  readonly at: SitePoint;
  readonly reading: Inches;
  /** The stretch of the bay that begins here; null before a gate, a wall's gap and the end. */
  readonly stretch: number | null;
}

/** Every post of a run, and the marks that its end posts stand off. */
const stopsOf = (run: Run, layout: Layout, how: ChainStyle): Stop[] => {
  const mark = (at: SitePoint, station: number): Stop => ({
    at,
    reading: readingAt(run, inches(station), how),
    stretch: null,
  });
  const posts = run.posts.flatMap(({ post, station }, n): Stop[] => {
    const at = layout.posts[post]?.at;
    const space = run.spaces[n];
    const stretch = space?.kind === 'bay' ? space.stretch : null;
    return at === undefined ? [] : [{ at, reading: readingAt(run, station, how), stretch }];
  });
  const first = run.posts[0]?.station ?? 0;
  const last = run.posts.at(-1)?.station ?? run.length;
  return [
    ...(first > spot ? [mark(run.start, 0)] : []),
    ...posts,
    ...(run.length - last > spot ? [mark(run.end, run.length)] : []),
  ];
};

const groupText = (lengths: readonly Inches[], whole: Inches, style: LengthStyle): string => {
  const written = new Set(lengths.map((length) => formatLength(length, style)));
  const [each] = written;
  const total = formatLength(whole, style);
  return written.size === 1
    ? `${lengths.length} bays at ${each} = ${total}`
    : `${lengths.length} bays, together ${total}`;
};

/** Where the stretch of bays that begins at a stop ends; the next stop where there is none. */
const endOfStretch = (stops: readonly Stop[], from: number): number => {
  const stretch = stops[from]?.stretch ?? null;
  const others = stops.findIndex((stop, n) => n > from && stop.stretch !== stretch);
  if (stretch === null) return from + 1;
  return others < 0 ? stops.length - 1 : others;
};

/** Neighbouring bays of one stretch, to be written as one where they do not fit singly. */
const groupsOf = (stops: readonly Stop[], style: LengthStyle): ChainGroup[] => {
  const groups: ChainGroup[] = [];
  const between = (from: number, to: number): Inches =>
    inches(Math.abs((stops[to]?.reading ?? 0) - (stops[from]?.reading ?? 0)));
  let from = 0;
  while (from < stops.length) {
    const to = endOfStretch(stops, from);
    if (to - from > 1) {
      const lengths = Array.from({ length: to - from }, (_, n) => between(from + n, from + n + 1));
      groups.push({ from, to, text: groupText(lengths, between(from, to), style) });
    }
    from = to;
  }
  return groups;
};

/**
 * The dimension chain of a run: from post to post, centre to centre, and its total. The readings
 * of the tape are rounded one by one and each bay is the difference of two of them, so that the
 * chain adds up to its total whatever it is written in.
 */
export const drawChain = (run: Run, layout: Layout, how: ChainStyle): readonly Primitive[] => {
  const { style, off } = how;
  const stops = stopsOf(run, layout, how);
  const readings = stops.map(({ reading }) => reading);
  const texts = readings
    .slice(1)
    .map((reading, n) => formatLength(inches(Math.abs(reading - (readings[n] ?? 0))), style));
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined || texts.length === 0) return [];
  const total = texts.length > 1 ? formatLength(inches(Math.abs(last - first)), style) : null;
  return [
    {
      kind: 'dimension chain',
      points: stops.map(({ at }) => at),
      texts,
      total,
      off,
      groups: groupsOf(stops, style),
      name: runName(run, layout),
    },
  ];
};
