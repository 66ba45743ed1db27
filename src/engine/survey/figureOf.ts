import type { Observation } from '../../site/observation.ts';
import { formatAngle } from '../../units/formatAngle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';

/** A direction counter-clockwise from east, written as a compass is read: degrees clockwise from north. */
export const azimuthText = (bearing: number): string => {
  const turned = (((Math.PI / 2 - bearing) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return formatAngle(radians(turned));
};

/** The figure that an observation reads, as it is written; empty for what is told without one. */
export const figureOf = (seen: Observation, style: LengthStyle): string => {
  if (seen.kind === 'tape') return formatLength(seen.length, style);
  if (seen.kind === 'offset') return formatLength(inches(Math.abs(seen.distance)), style);
  return seen.kind === 'bearing' ? azimuthText(seen.bearing) : '';
};
