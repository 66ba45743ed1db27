import type { Inches } from '../../units/inches.ts';

/**
 * The concrete that a round hole takes, cubic inches, with a post of an outside diameter down to its
 * bottom: the hole without the post. Inches; nothing where the post fills the hole.
 */
export const holeVolume = (
  { diameter, depth }: { readonly diameter: Inches; readonly depth: Inches },
  od: Inches,
): number => Math.max(0, (Math.PI / 4) * (diameter ** 2 - od ** 2) * depth);
