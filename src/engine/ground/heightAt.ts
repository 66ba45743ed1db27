import { heightOn } from '../../geometry/heightOn.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Ground } from './groundOf.ts';

/** The height of the ground at a place, inches above the datum; null outside of the shots. */
export const heightAt = ({ mesh, heights }: Ground, at: SitePoint): Inches | null => {
  const height = heightOn(mesh, heights, at);
  return height === null ? null : inches(height);
};
