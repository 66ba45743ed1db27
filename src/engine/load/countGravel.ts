import type { Inches } from '../../units/inches.ts';
import type { LoadLine } from '../loadLine.ts';
import type { Post } from '../post.ts';
import { holeVolume } from '../structure/holeVolume.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Gravel under the posts in the ground, so many inches deep over the whole hole; none for 0. */
export const countGravel = (posts: readonly Post[], depth: Inches): LoadLine[] => {
  const dug = posts.filter(({ wall }) => wall === null);
  if (depth === 0 || dug.length === 0) return [];
  const count = dug.reduce(
    (sum, { hole }) => sum + holeVolume({ diameter: hole.diameter, depth }, null) / 1728,
    0,
  );
  return [
    {
      part: 'concrete',
      code: 'gravel',
      item: phrase`Gravel`,
      count,
      unit: 'cubic feet',
      each: depth,
      sold: null,
      rule: phrase`Under every post, π/4 × diameter² × its depth, added up; the hole is deeper by it.`,
      source: phrase`company rule`,
      of: { posts: dug.map(({ id }) => id), lines: [], gates: [] },
    },
  ];
};
