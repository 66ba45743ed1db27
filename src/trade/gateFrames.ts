import { inches, type Inches } from '../units/inches.ts';
import type { FencePipe } from './pipes.ts';
import { schedule40 } from './schedule40.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** Up to here a leaf has the lighter frame, inches. */
const lightUpTo = { width: inches(96), height: inches(72) };

export const frameRule: Source = {
  text: phrase`frame of 1.660 in OD up to 8 ft wide and 6 ft high, else 1.900: ASTM F900, from memory`,
  status: 'memory',
};

const light = schedule40(1.66);
const heavy = schedule40(1.9);

/**
 * The pipe that the frame of a leaf is made of, by the leaf's width and height in inches; a height
 * that nobody has said is taken for low.
 */
export const frameFor = (width: Inches, height: Inches | null): FencePipe =>
  width <= lightUpTo.width && (height ?? 0) <= lightUpTo.height ? light : heavy;
