import type { Atom } from '../../../drawing/atom.ts';
import { circleOutline, rectangleOutline } from '../../../drawing/explode/polylineOutline.ts';
import { pens } from '../../../drawing/pens.ts';
import { tapeLevels } from '../../../drawing/tape/tapeLevels.ts';
import { xAt } from '../../../drawing/tape/tapeReach.ts';
import type { TapeStrip } from '../../../drawing/tape/tapeStrip.ts';
import type { LineId } from '../../../site/ids.ts';
import type { Lit } from '../../../store/session.ts';

/** Half the height of a band, and the radius of a ring, paper inches. */
const half = 0.1;
const ring = 0.11;

/**
 * What shows on the tape of a line what one line of the load list counts, as `litMarks` does on the pad:
 * bands along fence and openings, which belong under the strip, and rings round posts, which go over it.
 */
export const litOnTape = (
  line: LineId,
  { reaches, posts, gates }: Pick<TapeStrip, 'reaches' | 'posts' | 'gates'>,
  lit: Lit | null,
): { readonly under: readonly Atom[]; readonly over: readonly Atom[] } => {
  if (lit === null) return { under: [], over: [] };
  const band = (from: number, to: number): Atom => ({
    do: 'fill',
    ink: 'selected',
    opacity: 0.3,
    outline: rectangleOutline({ x: from, y: tapeLevels.fence - half }, to - from, 2 * half),
  });
  const along = lit.lines.includes(line)
    ? reaches.map((reach) => band(reach.x, xAt(reach, reach.to)))
    : [];
  const opened = gates.filter(({ gate }) => lit.gates.includes(gate));
  const ringed = posts.filter(({ post }) => lit.posts.includes(post));
  return {
    under: [...along, ...opened.map(({ from, to }) => band(from, to))],
    over: ringed.map(({ x }) => ({
      do: 'stroke',
      pen: pens.selected,
      outline: circleOutline({ x, y: tapeLevels.fence }, ring),
    })),
  };
};
