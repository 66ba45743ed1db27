import type { ObservationKind } from '../../site/observation.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { toDegrees, radians } from '../../units/radians.ts';

const angles: readonly ObservationKind[] = ['square', 'bearing'];

/** Whether an observation of a kind is an angle, in radians; else it is a length, in inches. */
export const isAngle = (kind: ObservationKind): boolean => angles.includes(kind);

/** How far something is off, without its sign: a length as on a tape, an angle in degrees. */
export const offText = (kind: ObservationKind, off: number, style: LengthStyle): string =>
  isAngle(kind)
    ? `${Number(toDegrees(radians(Math.abs(off))).toFixed(2))}°`
    : formatLength(inches(Math.abs(off)), style);
