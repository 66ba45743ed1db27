import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Ground } from '../ground/groundOf.ts';
import { heightAt } from '../ground/heightAt.ts';

/**
 * How much more a tape reads that is pulled straight from the ground at one place to the ground at
 * another than one that is held level, inches. Null where the ground of either is not known.
 */
export const longerOnSlope = (
  ground: Ground | null,
  from: SitePoint,
  to: SitePoint,
): Inches | null => {
  if (ground === null) return null;
  const [low, high] = [heightAt(ground, from), heightAt(ground, to)];
  if (low === null || high === null) return null;
  const level = distance(from, to);
  return inches(Math.hypot(level, high - low) - level);
};
