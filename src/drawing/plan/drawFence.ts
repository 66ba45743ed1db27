import { trackPoints } from '../../geometry/track.ts';
import type { Infill } from '../../site/infill.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Layout, LineLayout, Run } from '../../engine/layout.ts';
import type { Primitive } from '../primitive.ts';

/** How far straight pieces may lie inside a curve that they are drawn for, inches. */
const curveOff = 1;

/** Pieces of a run that are fence, each through the posts it hangs on; openings part them. */
const fencedPieces = (run: Run, layout: Layout): SitePoint[][] => {
  const pieces: SitePoint[][] = [];
  let piece: SitePoint[] = [];
  run.posts.forEach(({ post }, n) => {
    const at = layout.posts.get(post)?.at;
    if (at !== undefined) piece.push(at);
    if (run.spaces[n]?.kind === 'bay') return;
    pieces.push(piece);
    piece = [];
  });
  return pieces.filter(({ length }) => length > 1);
};

/** A fence line that could not be laid out, as a ghost of its legs. */
export const ghostOf = ({ legs }: LineLayout): readonly Primitive[] =>
  legs.map((leg) => ({
    kind: 'polyline',
    points: trackPoints(leg, curveOff),
    closed: false,
    pen: 'fence ghost',
  }));

/**
 * What hangs on one run, from post to post and not across openings; on a curve it bends at every post.
 */
export const drawFence = (run: Run, layout: Layout, of: Infill['kind']): readonly Primitive[] =>
  fencedPieces(run, layout).flatMap((points): Primitive[] => {
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined) return [];
    const through = run.bow === 0 ? [first, last] : points;
    return [{ kind: 'fence', of, points: through, closed: false, pen: 'fence' }];
  });
