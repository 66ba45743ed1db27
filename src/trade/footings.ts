import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';
import { phrase } from '../phrases/phrase.ts';

/** Where the rules for holes come from. */
export const holeRule: Source = { text: 'ASTM F567-07 5.1', status: 'published' };

/** Where the rule for holes of square posts comes from. */
export const squareHoleRule: Source = {
  text: phrase`three times the side of a square post: common practice, no published source; as deep as ASTM F567-07 5.1 has it for chain link`,
  status: 'practice',
};

/** Where the sizes of augers come from. */
export const augerSizes: Source = {
  text: phrase`auger sizes 6, 8, 9, 10, 12, 14, 16, 18, 24 in: common practice, no published source`,
  status: 'practice',
};

const augers = [6, 8, 9, 10, 12, 14, 16, 18, 24];
const plainDepth = 24;
const perFoot = 3;
const plainHeight = 48;

/**
 * The least diameter of the hole for a post of an outside diameter, inches: 4 times up to 4 in,
 * 3 times above. The rule steps down there: a post just over 4 in needs less than one of 4 in.
 */
export const holeDiameter = (od: Inches): Inches => inches(od * (od <= 4 ? 4 : 3));

/** The least diameter of the hole for a square post by its side, inches. */
export const squareHoleDiameter = (side: Inches): Inches => inches(3 * side);

/** The smallest auger that bores at least a diameter, inches; above 24 in the next even inch. */
export const augerFor = (diameter: Inches): Inches =>
  inches(augers.find((auger) => auger >= diameter) ?? 2 * Math.ceil(diameter / 2));

/**
 * The least depth of the hole for a height of fabric, inches: 24 in, and 3 in more for each foot
 * above 4 ft. A part of a foot counts as a whole one: a hole may be deeper, not shallower.
 */
export const holeDepth = (fabricHeight: Inches): Inches => {
  const feetOver = Math.ceil(Math.max(0, fabricHeight - plainHeight) / 12);
  return inches(plainDepth + perFoot * feetOver);
};
