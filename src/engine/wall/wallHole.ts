import { coreCover, coreRoom, plateSide } from '../../trade/wallSets.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Post } from '../post.ts';

/**
 * What a post of an outside diameter takes of the wall that it stands on, inches: the hole that is
 * drilled for it, or nothing of its depth and the side of its plate for a diameter.
 */
export const wallHole = ({ set }: WallTop, od: Inches): Post['hole'] =>
  set.kind === 'cored'
    ? { diameter: inches(od + set.room), depth: set.depth, source: coreRoom.source.text }
    : { diameter: set.side, depth: inches(0), source: plateSide.source.text };

/**
 * How far the centre of a post stays from a face or a step of its wall, inches: half its hole and
 * the concrete that is left beside it, or half its plate.
 */
export const wallReach = ({ set }: WallTop, od: Inches): Inches =>
  inches(set.kind === 'cored' ? (od + set.room) / 2 + coreCover.length : set.side / 2);
