import { spot } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import { elevationGround } from './elevationGround.ts';
import { elevationLabels } from './elevationLabels.ts';
import { leafAtoms, slideAtoms } from './elevationLeaves.ts';
import { elevationParts, receiverAtoms } from './elevationParts.ts';
import { holeAtoms, postAtoms } from './elevationPosts.ts';
import { elevationSizes, type Extent } from './elevationSizes.ts';
import { joined, type DetailPart } from './detailPart.ts';
import type { GateSight, SightPost } from './gateSight.ts';
import { onPaper, type OnPaper } from './onPaper.ts';

/** Ground drawn beyond the outermost hole, paper inches. */
const beyond = 0.2;

/** Posts that hold a leaf open stand far in front of or behind the gate: the plan has them. */
const postsIn = ({ pair, stands }: GateSight): SightPost[] => [
  ...pair,
  ...stands.filter(({ post }) => post.kind !== 'hold-open'),
];

const extentOf = (sight: GateSight, ratio: number): Extent => {
  const posts = postsIn(sight);
  const hung = [...sight.leaves, ...sight.slides];
  const sides = [
    ...posts.flatMap(({ at, post }) => {
      const half = Math.max(post.od, post.hole.diameter) / 2;
      return [at.x - half, at.x + half];
    }),
    ...sight.slides.flatMap(({ closed }) => closed),
  ];
  const tops = [
    ...posts.map(({ base, post }) => base + post.above),
    ...hung.map(({ bottom, height }) => bottom + height),
  ];
  return {
    left: Math.min(...sides) - beyond * ratio,
    right: Math.max(...sides) + beyond * ratio,
    top: Math.max(...tops),
  };
};

/** Posts and leaves, the farthest from who looks first: they stand on the right of the leg. */
const standing = (sight: GateSight, on: OnPaper): Atom[] => {
  const things = [
    ...postsIn(sight).map((post) => ({ y: post.at.y, atoms: postAtoms(post, on) })),
    ...sight.leaves.map((leaf) => ({ y: leaf.pin.y, atoms: leafAtoms(leaf, sight, on) })),
    ...sight.slides.map((slide) => ({ y: slide.aside, atoms: slideAtoms(slide, sight, on) })),
  ];
  // what is in one line keeps its order, whatever rounding says
  return things
    .toSorted((a, b) => (Math.abs(b.y - a.y) < spot ? 0 : b.y - a.y))
    .flatMap(({ atoms }) => atoms);
};

/**
 * A gate from the right of its leg, closed, its first post on the left, at a scale (ground inches to one of the
 * paper): posts in their holes, leaves with hinges, latch, drop rod and receiver, rollers, the ground, and the
 * dimensions outside of all of these. Zero is where the inside face of the first post meets the ground at the
 * higher post.
 */
export const gateElevation = (sight: GateSight, site: Site, ratio: number): DetailPart => {
  const on = onPaper(ratio);
  const extent = extentOf(sight, ratio);
  const atoms = [
    ...postsIn(sight).flatMap((post) => holeAtoms(post, on)),
    ...receiverAtoms(sight, on),
    ...elevationGround(sight, [extent.left, extent.right], on),
    ...standing(sight, on),
    ...elevationParts(sight, site, on),
  ];
  return joined([
    { atoms, labels: [] },
    { atoms: [], labels: elevationLabels(sight, site, on) },
    elevationSizes({ sight, site, on, extent }),
  ]);
};
