import type { Layout, Run } from '../../engine/layout.ts';
import { tapeReadings } from '../../engine/posts/tapeReadings.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { formatLength } from '../../units/formatLength.ts';
import { sum, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { openingText } from '../opening/openingText.ts';
import type { Primitive } from '../primitive.ts';
import { spansOf, type ChainPart } from './chainSpans.ts';
import { drawChord } from './drawChord.ts';
import { groupTexts } from './groupTexts.ts';
import { runName } from './runName.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How the chain of a run is written. */
export interface ChainStyle {
  readonly hook: 'start' | 'end';
  readonly style: LengthStyle;
  /** Paper inches to the left of the run; negative to the right. */
  readonly off: number;
  /** Printed tapes are named where the pieces find no room. */
  readonly tapes?: 'printed' | undefined;
}

/**
 * Points and pieces from the hook on; a mark that an end post stands off is a point too. `of` is the
 * stretch of fence that a piece is a bay of, or the gate that it is the opening of.
 */
const chainOf = (run: Run, layout: Layout, { hook, style }: ChainStyle) => {
  const { posts, spaces, lead, tail } = tapeReadings(run, hook, style);
  const [near, far] = hook === 'start' ? [run.start, run.end] : [run.end, run.start];
  const between = hook === 'start' ? run.spaces : run.spaces.toReversed();
  const bare = (length: Inches): ChainPart[] => (length === 0 ? [] : [{ length, of: null }]);
  const points: SitePoint[] = [
    ...(lead === 0 ? [] : [near]),
    ...posts.flatMap(({ post }) => layout.posts.get(post)?.at ?? []),
    ...(tail === 0 ? [] : [far]),
  ];
  const bays = spaces.map((length, n): ChainPart => ({ length, of: between[n] ?? null }));
  return { points, pieces: [...bare(lead), ...bays, ...bare(tail)] };
};

/** The clear opening of a gate, as its chain says it under the way from post to post. */
const clearText = ({ of }: ChainPart, { gates }: Layout, style: LengthStyle): string => {
  const gate = of?.kind === 'gate' ? gates[of.gate] : undefined;
  return gate === undefined ? '' : `\n${phrase`${openingText(gate.opening.target, style)} clear`}`;
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
  const lengths = pieces.map(({ length }) => formatLength(length, style));
  const spans = spansOf(pieces);
  // stretches of one bay each would say the same as the bays, and one stretch the same as the total
  const fenced = spans.filter(({ from }) => pieces[from]?.of !== null);
  const tiered = fenced.length > 1 && spans.length < pieces.length;
  const clear = pieces.map((piece) => clearText(piece, layout, style));
  const name = runName(run, layout);
  const whole = formatLength(sum(pieces.map(({ length }) => length)), style);
  return [
    {
      kind: 'dimension chain',
      points,
      texts: lengths.map((text, n) => `${text}${clear[n] ?? ''}`),
      total: pieces.length > 1 ? whole : null,
      // from the hook at the end the chain runs the other way
      off: hook === 'start' ? off : -off,
      groups: spans
        .filter(({ from, to }) => to - from > 1)
        .map(({ from, to }) => {
          const bays = pieces.slice(from, to).map(({ length }) => length);
          return { from, to, ...groupTexts(bays, style) };
        }),
      ...(tiered
        ? {
            stretches: spans.map(({ from, to }) => {
              const long = sum(pieces.slice(from, to).map(({ length }) => length));
              return { from, to, text: `${formatLength(long, style)}${clear[from] ?? ''}` };
            }),
          }
        : {}),
      name,
      ...(tapes === undefined ? {} : { elsewhere: phrase`see tape ${name}` }),
    },
  ];
};
