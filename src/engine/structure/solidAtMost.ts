import { inches, type Inches } from '../../units/inches.ts';

/**
 * A pipe as a document may have it, with a wall that a pipe can have: one told to be thicker than half of
 * the diameter is a solid bar. Inches.
 */
export const solidAtMost = <Told extends { readonly od: Inches; readonly wall: Inches }>(
  pipe: Told,
): Told => ({ ...pipe, wall: inches(Math.min(pipe.wall, pipe.od / 2)) });
