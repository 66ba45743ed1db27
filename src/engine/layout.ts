import type { SitePoint } from '../geometry/point.ts';
import type { Track } from '../geometry/track.ts';
import type { Segment } from '../geometry/segment.ts';
import type { GateId, LeafId, LineId, VertexId } from '../site/ids.ts';
import type { WallTop } from '../site/wallTop.ts';
import type { Inches } from '../units/inches.ts';
import type { Radians } from '../units/radians.ts';
import type { Flag } from './flag.ts';
import type { Ground } from './ground/groundOf.ts';
import type { Opening } from './opening.ts';
import type { Survey } from './survey/survey.ts';
import type { StretchOnGrade } from './posts/fencesOn.ts';
import type { CourseGround } from './posts/groundUnder.ts';
import type { Post, PostId, Posts } from './post.ts';

/** All that follows from a site. Never stored; worked out again from the document. */
export interface Layout {
  readonly lines: Readonly<Record<LineId, LineLayout>>;
  readonly posts: Posts;
  readonly gates: Readonly<Record<GateId, GateLayout>>;
  /** Null where there are no shots. */
  readonly ground: Ground | null;
  /** What the observations say of themselves and of the marks. */
  readonly survey: Survey;
  readonly flags: readonly Flag[];
}

/** One fence line laid out: its legs as drawn, its runs as built. */
export interface LineLayout {
  readonly id: LineId;
  readonly legs: readonly Leg[];
  readonly runs: readonly Run[];
  /** Along the marks, gates included. */
  readonly length: Inches;
}

/**
 * The piece between two marks, as drawn: straight, or an arc where it has a bow. `length` is along
 * it, `bearing` that of its chord, `from` in inches along the line.
 */
export interface Leg extends Track<'site'> {
  readonly id: VertexId;
  readonly length: Inches;
  readonly bearing: Radians;
  readonly from: Inches;
}

/**
 * Fence between two neighbouring posts that stand at marks (corner, end, junction, bend), straight or
 * along one curve: what one hooked tape serves. Stations and lengths are inches along the run from `start`, the
 * mark at its beginning, parallel to the grade where the ground is known; a post at a wall stands a
 * little in from it.
 */
export interface Run extends Track<'site'> {
  readonly id: `run:${string}`;
  readonly line: LineId;
  readonly legs: readonly VertexId[];
  readonly length: Inches;
  /** From its start to its end, straight. */
  readonly bearing: Radians;
  /** Rising stations; the first and last post are the run's ends. */
  readonly posts: readonly { readonly post: PostId; readonly station: Inches }[];
  /** One fewer than the posts. */
  readonly spaces: readonly Space[];
  /** What it stands on; null for the ground. */
  readonly wall: WallTop | null;
  /** Null where nothing is known of the ground: lengths are then those in plan. */
  readonly ground: RunGround | null;
}

/** The ground under a run, or the top of its wall: stations of `profile` and of the posts of `fences` are in plan. */
export interface RunGround extends CourseGround {
  /** The fabric of each stretch over ground of which all is known. */
  readonly fences: readonly StretchOnGrade[];
}

/**
 * What lies between two neighbouring posts of a run: a bay of fence or a gate. `length` is centre
 * to centre; a gate's clear opening stands in its `GateLayout`. Stretches are numbered along the
 * line from 1.
 */
export type Space =
  | { readonly kind: 'bay'; readonly length: Inches; readonly stretch: number }
  | { readonly kind: 'gate'; readonly length: Inches; readonly gate: GateId };

/** A gate where it stands. A gate that does not fit is not placed: it is drawn, flagged, not built. */
export interface GateLayout {
  readonly id: GateId;
  readonly line: LineId;
  readonly placed: boolean;
  readonly opening: Opening;
  /**
   * How far apart its posts stand in this layout, inside faces, inches: as they were set in the
   * ground; at the opening's target where they were not, or where that leaves other posts.
   */
  readonly stands: Inches;
  /** The posts nearer to the start and the end of the leg; null while it is not placed. */
  readonly posts: { readonly start: PostId; readonly end: PostId } | null;
  /** Centres of the two gate posts, placed or not, by the direction of the leg. */
  readonly start: SitePoint;
  readonly end: SitePoint;
  /** Middle of the opening. */
  readonly middle: SitePoint;
  readonly bearing: Radians;
  /** The leaves that turn, the one nearer to the start of the leg first. */
  readonly leaves: readonly LeafLayout[];
  /** The leaves that roll, in the same order. */
  readonly slides: readonly SlideLayout[];
  /** Middle of the stop that two leaves latch to; null where there is none. */
  readonly stop: SitePoint | null;
  /** Where the drop rod drops in, and the hole for what it drops into; null where none is said. */
  readonly receiver: { readonly at: SitePoint; readonly hole: Post['hole'] } | null;
}

/**
 * One leaf that turns about the pin of its hinges, by `turns` from lying in the fence (`closed`) to
 * `open`; above zero to the left. Its frame begins `hung` from the pin and is `thickness` through.
 */
export interface LeafLayout {
  readonly id: LeafId;
  readonly width: Inches;
  readonly hinge: SitePoint;
  /** `assumed`: half of what the hinges take up, since nobody has said where their pin is. */
  readonly pin: 'said' | 'assumed';
  readonly hung: Inches;
  readonly thickness: Inches;
  readonly closed: Radians;
  readonly turns: Radians;
  readonly open: Radians;
}

/** One leaf that rolls: its middle line from the tail to the front, closed and rolled aside. */
export interface SlideLayout {
  readonly id: LeafId;
  readonly width: Inches;
  readonly thickness: Inches;
  readonly closed: Segment<'site'>;
  readonly stored: Segment<'site'>;
}
