import type { Radians } from './radians.ts';

const words = [
  'east',
  'north-east',
  'north',
  'north-west',
  'west',
  'south-west',
  'south',
  'south-east',
] as const;

/** The nearest of the eight winds to an angle counter-clockwise from east. */
export const compassWord = (angle: Radians): (typeof words)[number] => {
  const eighth = Math.round(angle / (Math.PI / 4));
  return words[((eighth % 8) + 8) % 8] ?? 'east';
};
