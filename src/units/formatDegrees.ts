import { toDegrees, type Radians } from './radians.ts';

const two = (value: number): string => String(value).padStart(2, '0');

/** A finite angle of zero or more in degrees, minutes and whole seconds: `34°12'20"`. */
export const formatDegrees = (angle: Radians): string => {
  const seconds = Math.round(toDegrees(angle) * 3600);
  const rest = seconds % 3600;
  return `${Math.floor(seconds / 3600)}°${two(Math.floor(rest / 60))}'${two(rest % 60)}"`;
};
