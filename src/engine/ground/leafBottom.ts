import type { SitePoint } from '../../geometry/point.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Ground } from './groundOf.ts';
import { heightAt } from './heightAt.ts';

/**
 * The height of the bottom of level leaves, inches above the datum: a gap above the ground at the
 * higher of the places, such as the two gate posts. Null where the ground at one is not known, and
 * for no places.
 */
export const leafBottom = (
  ground: Ground,
  places: readonly SitePoint[],
  gap: Inches,
): Inches | null => {
  const heights = places.map((at) => heightAt(ground, at));
  const known = heights.filter((height) => height !== null);
  if (known.length === 0 || known.length < heights.length) return null;
  return inches(Math.max(...known) + gap);
};
