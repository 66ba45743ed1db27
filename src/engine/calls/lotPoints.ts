import type { SitePoint } from '../../geometry/point.ts';
import { trackPoints } from '../../geometry/track.ts';
import type { LotPoint } from '../../site/edits/drawLot.ts';
import type { CallCurve } from './course.ts';
import type { Traverse } from './traverse.ts';

interface Side {
  readonly start: SitePoint;
  readonly end: SitePoint;
  readonly curve: CallCurve | null;
}

/** Balanced where the calls close, else as they were called. */
const sidesOf = ({ lot, courses, points }: Traverse): readonly Side[] => {
  const zero = { x: 0, y: 0 };
  const corners = lot === null ? points : [...lot.corners, lot.corners[0] ?? zero];
  return (lot?.courses ?? courses).map(({ curve }, n) => ({
    start: corners[n] ?? zero,
    end: corners[n + 1] ?? zero,
    curve,
  }));
};

/** M = C/2 tan Δ/4; a curve to the right lies left of the way along its chord. */
const bowOf = (curve: CallCurve | null): number => {
  if (curve === null) return 0;
  return (curve.side === 'right' ? 1 : -1) * (curve.chord / 2) * Math.tan(curve.delta / 4);
};

/**
 * The points of a lot for drawing, from its point of beginning, `start` the name of that: its corners with
 * what the calls say is there, and between them points of its curves, the straight pieces between which
 * lie at most `off` inches inside. Open calls end at a point of their own.
 */
export const lotPoints = (told: Traverse, start: string, off: number): readonly LotPoint[] => {
  const sides = sidesOf(told);
  const names = [start || (told.lot === null ? '' : (told.courses.at(-1)?.to ?? ''))];
  names.push(...told.courses.map(({ to }) => to));
  const points = sides.flatMap((side, n): LotPoint[] => {
    const [corner = side.start, ...along] = trackPoints({ ...side, bow: bowOf(side.curve) }, off);
    return [
      { ...corner, label: names[n] ?? '', is: 'corner' },
      ...along.slice(0, -1).map((at): LotPoint => ({ ...at, label: '', is: 'curve' })),
    ];
  });
  const end = told.points.at(-1);
  if (told.lot !== null || end === undefined || sides.length === 0) return points;
  return [...points, { x: end.x, y: end.y, label: names.at(-1) ?? '', is: 'corner' }];
};
