import { compassWord } from './compassWord.ts';
import type { Radians } from './radians.ts';
import { phrase } from '../phrases/phrase.ts';

const names: Readonly<Record<ReturnType<typeof compassWord>, string>> = {
  east: phrase`east`,
  'north-east': phrase`north-east`,
  north: phrase`north`,
  'north-west': phrase`north-west`,
  west: phrase`west`,
  'south-west': phrase`south-west`,
  south: phrase`south`,
  'south-east': phrase`south-east`,
};

/** What a reader calls the nearest of the eight winds to an angle counter-clockwise from east. */
export const compassName = (angle: Radians): string => names[compassWord(angle)];
