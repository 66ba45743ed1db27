import type { FenceSpec } from '../../site/fenceSpec.ts';
import { inches, type Inches } from '../../units/inches.ts';

/** What the longest bay of a build follows from; lengths in inches. */
type Built = Pick<FenceSpec, 'infill' | 'maxBay' | 'linePost'>;

/**
 * The widest panel that a build hangs, from face to face, inches: its own width, or less where the longest
 * bay leaves no room for it; null for a build without panels, and for one that is laid out without line posts.
 */
export const widestPanel = ({ infill, maxBay, linePost }: Built): Inches | null =>
  infill.kind === 'panels' && Number.isFinite(maxBay)
    ? inches(Math.max(1, Math.min(infill.width, maxBay - linePost.od)))
    : null;

/** How far apart two posts may stand at most, centre to centre, by how thick they are; inches. */
export const longestBay = (
  spec: Built,
  posts: readonly [Inches, Inches] = [spec.linePost.od, spec.linePost.od],
): Inches => {
  const panel = widestPanel(spec);
  return panel === null ? spec.maxBay : inches(panel + (posts[0] + posts[1]) / 2);
};
