import { formatDegrees } from '../../units/formatDegrees.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { CallCurve } from './course.ts';
import type { CurveGiven } from './solveCurve.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * How far figures of one curve may differ: plats round them one by one, to hundredths of a foot and
 * whole seconds or minutes. Ours, no published source.
 */
export const allowedOff = (length: number): number => Math.max(0.6, length / 2000);

const named = {
  radius: phrase`radius`,
  arc: phrase`arc length`,
  chord: phrase`chord`,
  tangent: phrase`tangent length`,
} as const;

/**
 * What a call tells of a curve that the curve does not have, a line for each; none where all agree to
 * how plats round. A central angle is compared by the arc that it makes.
 */
export const curveFaults = (
  given: CurveGiven,
  curve: Omit<CallCurve, 'side'>,
  style: LengthStyle,
): string[] => {
  const write = (length: number): string => formatLength(inches(length), style);
  const lengths = (['radius', 'arc', 'chord', 'tangent'] as const).flatMap((key) => {
    const [told, found]: readonly (Inches | null | undefined)[] = [given[key], curve[key]];
    if (told === undefined || told === null) return [];
    if (found === null || found === undefined) return [phrase`no ${named[key]} past half a circle`];
    if (Math.abs(told - found) <= allowedOff(found)) return [];
    return [
      phrase`the ${named[key]} is told as ${write(told)}, the other figures make it ${write(found)}`,
    ];
  });
  const { delta } = given;
  const off = delta === undefined ? 0 : Math.abs(delta - curve.delta) * curve.radius;
  if (delta === undefined || off <= allowedOff(curve.arc)) return lengths;
  return [
    phrase`the central angle is told as ${formatDegrees(delta)}, the other figures make it ${formatDegrees(curve.delta)}`,
    ...lengths,
  ];
};
