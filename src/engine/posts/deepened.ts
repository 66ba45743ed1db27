import type { WallTop } from '../../site/wallTop.ts';
import type { Inches } from '../../units/inches.ts';
import type { Post } from '../post.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * A hole in the ground as deep as the build wants every hole at least, inches; one in a wall as it is, and
 * so is one that is deeper anyway.
 */
export const deepened = (hole: Post['hole'], wall: WallTop | null, least: Inches): Post['hole'] =>
  wall !== null || hole.depth >= least
    ? hole
    : { ...hole, depth: least, source: phrase`as deep as the build asks for` };
