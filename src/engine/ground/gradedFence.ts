import { inches, type Inches } from '../../units/inches.ts';
import type { Radians } from '../../units/radians.ts';
import type { BottomEdge } from './gapUnder.ts';

/** A post on sloping ground: its station in plan and the height of the ground there; inches. */
export interface GradePost {
  readonly at: Inches;
  readonly ground: Inches;
}

/** What hangs between the posts, inches. */
export interface FabricOnGrade {
  /** The width of the fabric: its height on level ground. */
  readonly fabric: Inches;
  /** How far posts stand above the top of the fabric. */
  readonly above: Inches;
  /** How far the bottom of the fabric is kept above the ground at the posts. */
  readonly clear: Inches;
}

/** The fabric of one bay by its bottom edge. */
export interface GradedBay extends BottomEdge {
  /** The angle of its bottom with the level, above 0 uphill. */
  readonly rake: Radians;
  /** The length of its bottom, parallel to the grade; inches. */
  readonly slope: Inches;
  /** How far a plumb end of the fabric runs out of square: its width times the grade; inches. */
  readonly endCut: Inches;
  /** The height of the fabric measured plumb; inches. */
  readonly plumb: Inches;
}

/** A fence on sloping ground, worked out. */
export interface GradedFence {
  /** Along the grade, in equal steps, or as the wall steps that it stands on. */
  readonly way: 'follow' | 'step' | 'wall';
  readonly bays: readonly GradedBay[];
  /** With the height of each post above its ground. */
  readonly posts: readonly (GradePost & { readonly height: Inches })[];
  /** How much higher each bay is than the one before, below 0 lower; 0 where the fence does not step by itself. */
  readonly step: Inches;
}

/** The posts with their heights: each carries the higher of its bays. */
export const postsFor = (
  posts: readonly GradePost[],
  bays: readonly GradedBay[],
  above: Inches,
): GradedFence['posts'] =>
  posts.map((post, n) => {
    const [left, right] = [bays[n - 1], bays[n]];
    const tops = [
      ...(left === undefined ? [] : [left.to.z + left.plumb]),
      ...(right === undefined ? [] : [right.from.z + right.plumb]),
    ];
    return { ...post, height: inches(Math.max(post.ground, ...tops) + above - post.ground) };
  });
