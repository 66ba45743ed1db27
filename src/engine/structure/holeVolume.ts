import type { PostGirth } from '../posts/postGirth.ts';
import type { Inches } from '../../units/inches.ts';

const footprint = (post: PostGirth | null): number => {
  if (post === null) return 0;
  return post.od ** 2 * (post.section === 'square' ? 1 : Math.PI / 4);
};

/**
 * The concrete that a round hole takes, cubic inches, with a post down to its bottom: the hole without the
 * post, or all of it for null. Inches; nothing where the post fills the hole.
 */
export const holeVolume = (
  { diameter, depth }: { readonly diameter: Inches; readonly depth: Inches },
  post: PostGirth | null,
): number => Math.max(0, ((Math.PI / 4) * diameter ** 2 - footprint(post)) * depth);
