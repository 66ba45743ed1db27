import type { PostPipe } from '../../site/postPipe.ts';
import { inches, type Inches } from '../../units/inches.ts';

/** How thick a post is: its outside diameter, or the side of a square one, inches. */
export type PostGirth = Pick<PostPipe, 'od' | 'section'>;

/** The diameter of the smallest round hole that a post goes into, inches: through the corners of a square one. */
export const postGirth = ({ od, section }: PostGirth): Inches =>
  section === 'square' ? inches(od * Math.SQRT2) : od;
