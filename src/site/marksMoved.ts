import { entry } from './entry.ts';
import type { FeatureId, MarkId } from './ids.ts';
import { marksInUse, ownMarks } from './marksInUse.ts';
import type { Site } from './site.ts';

/**
 * The marks that go when a feature is moved: all of its own. Ground with a height limit is no thing on the
 * ground: it leaves the marks that lines or other features stand on where they are, such as the corner of a
 * lot. RangeError for an unknown feature.
 */
export const marksMoved = (site: Site, id: FeatureId): MarkId[] => {
  const feature = entry(site, 'features', id);
  const own = ownMarks(feature);
  if (feature.kind !== 'height zone') return own;
  const { [id]: _, ...features } = site.features;
  const used = marksInUse({ ...site, features });
  return own.filter((mark) => !used.has(mark));
};
