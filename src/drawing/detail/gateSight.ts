import { leafBottom } from '../../engine/ground/leafBottom.ts';
import type { GateLayout, Layout, LeafLayout, SlideLayout } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import { standsByGate } from '../../engine/post.ts';
import { hingeHeights, type HingeHeights } from '../../engine/structure/hingeHeights.ts';
import { bottomOf } from '../../engine/sweep/leafRooms.ts';
import type { Gate } from '../../site/gate.ts';
import type { LeafId } from '../../site/ids.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import { alongGate, type GatePoint } from './alongGate.ts';
import { groundBy, type GroundBy } from './groundBy.ts';

/** A post as it is seen: `base` is the ground, or the wall, that it stands on; inches over the zero of heights. */
export interface SightPost {
  readonly post: Post;
  readonly at: GatePoint;
  /** How its faces are turned against the gate. */
  readonly turned: Radians;
  readonly base: number;
}

/** How high a leaf hangs and is, and how stout its frame is; inches. */
interface Hung {
  readonly bottom: Inches;
  readonly height: Inches;
  readonly frame: Inches;
}

/** A leaf that turns: its pin, and its frame from the hinge side to the free end while it is closed. */
export interface SightLeaf extends Hung, HingeHeights {
  readonly laid: LeafLayout;
  readonly pin: GatePoint;
  /** 1 where it hangs on the post on the left, -1 on the right. */
  readonly way: 1 | -1;
  /** Along the gate, inches. */
  readonly from: number;
  readonly to: number;
}

/** A leaf that rolls: along the gate from its tail to its front, closed and rolled aside; inches. */
export interface SightSlide extends Hung {
  readonly laid: SlideLayout;
  readonly aside: number;
  readonly closed: readonly [tail: number, front: number];
  readonly stored: readonly [tail: number, front: number];
  /** The inside face of the post that it rolls in at. */
  readonly face: number;
}

/**
 * A placed gate as its pictures show it: `x` along the gate from the inside face of its first post towards the
 * second, `y` to the left of that way, heights over the ground at the higher of its posts. Inches.
 */
export interface GateSight {
  readonly gate: Gate;
  readonly laid: GateLayout;
  readonly spec: FenceSpec;
  /** The two posts of the opening, the one nearer to the start of the leg first. */
  readonly pair: readonly [SightPost, SightPost];
  /** Roller posts, posts that hold a leaf open, stops. */
  readonly stands: readonly SightPost[];
  readonly leaves: readonly SightLeaf[];
  readonly slides: readonly SightSlide[];
  readonly receiver: { readonly at: GatePoint; readonly hole: Post['hole'] } | null;
  readonly ground: GroundBy;
}

interface Seen {
  readonly site: Site;
  readonly gate: Gate;
  readonly laid: GateLayout;
  readonly spec: FenceSpec;
  readonly to: (at: Post['at']) => GatePoint;
}

const hungOf = ({ gate, spec }: Seen, id: LeafId, frame: Inches): Hung => ({
  bottom: bottomOf(gate),
  height: gate.leaves[id]?.height ?? spec.fabricHeight,
  frame,
});

const leafOf = (seen: Seen, laid: LeafLayout): SightLeaf => {
  const pin = seen.to(laid.hinge);
  const hung = hungOf(seen, laid.id, laid.thickness);
  const way = Math.cos(laid.closed - seen.laid.bearing) > 0 ? 1 : -1;
  return {
    ...hung,
    ...hingeHeights(hung.bottom, hung.height),
    laid,
    pin,
    way,
    from: pin.x + way * laid.hung,
    to: pin.x + way * (laid.hung + laid.width),
  };
};

const slideOf = (seen: Seen, laid: SlideLayout, opening: number): SightSlide => {
  const [tail, front] = [seen.to(laid.closed.start), seen.to(laid.closed.end)];
  const [back, rest] = [seen.to(laid.stored.start), seen.to(laid.stored.end)];
  return {
    ...hungOf(seen, laid.id, laid.thickness),
    laid,
    aside: tail.y,
    closed: [tail.x, front.x],
    stored: [back.x, rest.x],
    face: front.x > tail.x ? 0 : opening,
  };
};

const pairOf = ({ posts }: GateLayout, all: Layout['posts']): [Post, Post] | null => {
  const [start, end] = [posts?.start, posts?.end].map((id) => all.get(id ?? 'post:'));
  return start === undefined || end === undefined ? null : [start, end];
};

/** What a gate's pictures show of a layout; null for a gate that is not placed. */
export const gateSight = (site: Site, layout: Layout, laid: GateLayout): GateSight | null => {
  const gate = site.gates[laid.id];
  const spec = site.specs[site.lines[laid.line]?.spec ?? 'spec:'];
  const posts = pairOf(laid, layout.posts);
  if (gate === undefined || spec === undefined || posts === null) return null;
  const [start, end] = posts;
  const to = alongGate(start, laid.bearing);
  const seen: Seen = { site, gate, laid, spec, to };
  const onWall = start.wall !== null || end.wall !== null;
  const shots = onWall ? null : layout.ground;
  const level = shots === null ? null : leafBottom(shots, [laid.start, laid.end], inches(0));
  const ground = groundBy(level === null ? null : shots, level ?? 0, to);
  const postOf = (post: Post): SightPost => ({
    post,
    at: to(post.at),
    turned: radians(post.along - laid.bearing),
    base: ground.heightAt(post.at),
  });
  const beside = [...layout.posts.values()].filter(
    (post) => standsByGate(post) && post.gates.includes(laid.id),
  );
  const opening = to(end.at).x - end.od / 2;
  return {
    gate,
    laid,
    spec,
    pair: [postOf(start), postOf(end)],
    stands: beside.map(postOf),
    leaves: laid.leaves.map((leaf) => leafOf(seen, leaf)),
    slides: laid.slides.map((slide) => slideOf(seen, slide, opening)),
    receiver:
      laid.receiver === null ? null : { at: to(laid.receiver.at), hole: laid.receiver.hole },
    ground,
  };
};
