import { distance } from '../../geometry/distance.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Gate, Leaf } from '../../site/gate.ts';
import type { LeafId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import type { Pipe } from '../../site/pipe.ts';
import type { Site } from '../../site/site.ts';
import { defaultGapUnder } from '../../trade/gapUnder.ts';
import { frameFor } from '../../trade/gateFrames.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { hungFrom } from '../gate/hungFrom.ts';
import type { GateLayout, LeafLayout } from '../layout.ts';
import type { Post, PostId, Posts } from '../post.ts';
import { bendingCapacity } from './bendingCapacity.ts';
import { fabricOf } from './fabricOf.ts';
import { hangingLoad, type Hanging } from './hangingLoad.ts';
import { hingeHeights } from './hingeHeights.ts';
import { latchSag } from './latchSag.ts';
import { soilOf } from './lateralOf.ts';
import { leafWeight, type WeightTerm } from './leafWeight.ts';
import { momentDepth } from './momentDepth.ts';
import { pipeOf } from './pipeOf.ts';
import { solidAtMost } from './solidAtMost.ts';
import { steelOf } from './steelOf.ts';

/** What one leaf that turns does to the post that it hangs from. */
export interface LeafHanging {
  readonly leaf: LeafId;
  readonly post: PostId;
  readonly weight: readonly WeightTerm[];
  readonly pounds: number;
  /** What pulls at the upper hinge and pushes at the lower one, pounds. */
  readonly pull: number;
  /** About the axis of the post, and what its pipe may bear: inch-pounds. */
  readonly moment: number;
  readonly capacity: number;
  /** How deep its hole has to be for that moment alone, by the pole formula; and how deep it is: inches. */
  readonly asks: Inches;
  readonly depth: Inches;
  /** How far the latch side comes down by the bending of the post alone, inches. */
  readonly sag: Inches;
}

interface Hung {
  readonly leaf: Leaf;
  readonly laid: LeafLayout;
  readonly gate: Gate;
  readonly spec: FenceSpec;
  readonly post: Post;
  readonly pipe: Pipe;
}

const hangingOf = ({ leaf, laid, gate, spec, post, pipe }: Hung, lateral: number): LeafHanging => {
  const [width, height] = [leafWidth(leaf), leaf.height ?? spec.fabricHeight];
  const weight = leafWeight({
    width,
    height,
    frame: solidAtMost(leaf.frame ?? frameFor(width, height)),
    ...fabricOf(spec),
  });
  const pounds = weight.reduce((sum, one) => sum + one.pounds, 0);
  const hanging: Hanging = {
    pounds,
    width,
    hingeAllowance: inches(distance(post.at, laid.hinge) - post.od / 2 + laid.hung),
    postOd: post.od,
    ...hingeHeights(gate.bottom ?? defaultGapUnder.length, height),
  };
  const load = hangingLoad(hanging);
  return {
    leaf: laid.id,
    post: post.id,
    weight,
    pounds,
    ...load,
    asks:
      post.wall === null
        ? momentDepth(load.moment, { width: post.hole.diameter, lateral })
        : inches(0),
    depth: post.hole.depth,
    capacity: bendingCapacity({ od: pipe.od, wall: pipe.wall, yields: steelOf(spec, pipe).yields }),
    sag: latchSag(hanging, pipe.wall),
  };
};

/**
 * What the leaves of a gate that turn do to their posts, hanging still: weight from width, height, frame
 * and fabric (those of the build where a leaf does not say), the load at the hinges, and how far the latch
 * side comes down, and the hole that its moment asks for. A post on a wall has none. Their weight stays, so the ground bears no more than its class says. None for a leaf
 * whose post is not placed, is square, or of which nobody knows the pipe.
 */
export const leafHangings = (
  site: Pick<Site, 'gates' | 'lines' | 'specs' | 'conditions'>,
  layout: GateLayout,
  posts: Posts,
): LeafHanging[] => {
  const gate = site.gates[layout.id];
  const spec = site.specs[site.lines[layout.line]?.spec ?? 'spec:'];
  if (gate === undefined || spec === undefined) return [];
  return layout.leaves.flatMap((laid, n) => {
    const leaf = gate.leaves[laid.id];
    const post = posts.get(hungFrom(gate, layout, n) ?? 'post:');
    const pipe = post === undefined ? null : pipeOf(site, post);
    if (leaf === undefined || post === undefined || pipe?.section !== 'round') return [];
    return hangingOf({ leaf, laid, gate, spec, post, pipe }, soilOf(site.conditions).lateral);
  });
};
