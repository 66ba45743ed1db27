import { isMetric } from '../../units/isMetric.ts';
import {
  contourInterval,
  footIntervals,
  metricIntervals,
} from '../../engine/ground/contourInterval.ts';
import type { Contour } from '../../engine/ground/contour.ts';
import { contours } from '../../engine/ground/contours.ts';
import type { Ground } from '../../engine/ground/groundOf.ts';
import { bearing } from '../../geometry/bearing.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { OnLine, Primitive } from '../primitive.ts';
import { heightText } from './heightText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How far apart in height the contours of some ground are drawn, inches; null where none are. */
export const contourStep = (ground: Ground, { system }: LengthStyle): Inches | null => {
  const shown = ground.mesh.triangles.flat().map((n) => ground.heights[n] ?? NaN);
  const relief = Math.max(...shown) - Math.min(...shown);
  if (shown.length === 0 || !(relief > 0)) return null;
  const metric = isMetric(system);
  return contourInterval(inches(relief), metric ? metricIntervals : footIntervals);
};

/** Where along a contour its height may stand besides its middle, as shares of its points. */
const sharesTried = [0.35, 0.65, 0.2, 0.8] as const;

const onContour = (points: readonly SitePoint[]): OnLine[] =>
  sharesTried.flatMap((share) => {
    const n = Math.max(1, Math.floor(share * points.length));
    const [from, to] = [points[n - 1], points[n]];
    if (from === undefined || to === undefined) return [];
    // a contour goes on from piece to piece: each has room
    return [{ at: midpoint(from, to), angle: bearing(from, to), long: Infinity }];
  });

/** The height on a contour stands in its middle; left out where that is taken. */
const drawContour = ({ z, points, closed }: Contour, style: LengthStyle): Primitive[] => {
  const middle = Math.max(1, Math.floor(points.length / 2));
  const [from, to] = [points[middle - 1], points[middle]];
  const line = { kind: 'polyline', points, closed, pen: 'contour' } as const;
  if (from === undefined || to === undefined) return [line];
  const name: Primitive = {
    kind: 'text',
    at: midpoint(from, to),
    text: heightText(z, style),
    size: 0.141,
    rise: 0,
    angle: bearing(from, to),
    ink: 'ground',
    weight: 'regular',
    far: 'leave out',
    on: onContour(points),
    name: phrase`contour ${heightText(z, style)}`,
  };
  return [line, name];
};

const drawShots = ({ shots }: Ground, style: LengthStyle): Primitive[] =>
  shots.flatMap(({ x, y, z }): Primitive[] => [
    { kind: 'sign', sign: 'shot', at: { x, y }, off: 0 },
    {
      kind: 'text',
      at: { x, y },
      text: heightText(inches(z), style),
      size: 0.141,
      rise: 0.06,
      angle: radians(0),
      ink: 'ground',
      weight: 'regular',
      far: 'leave out',
      name: phrase`shot ${heightText(inches(z), style)}`,
    },
  ]);

/**
 * What is known of the ground, to lie under everything else: contours with their heights, no more
 * than twelve, and every grade shot as a cross with its own. Heights are written as lengths over
 * the datum. No shots draw nothing; shots that describe no ground are drawn without contours.
 */
export const drawGround = (ground: Ground | null, style: LengthStyle): readonly Primitive[] => {
  if (ground === null) return [];
  const step = contourStep(ground, style);
  const lines = step === null ? [] : contours(ground, step);
  return [...lines.flatMap((line) => drawContour(line, style)), ...drawShots(ground, style)];
};
