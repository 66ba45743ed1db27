import type { SitePoint } from '../geometry/point.ts';
import type { Infill } from '../site/infill.ts';
import type { Radians } from '../units/radians.ts';
import type { Hatch } from './hatch.ts';
import type { Ink } from './ink.ts';
import type { PenName } from './pens.ts';
import type { SignName } from './signName.ts';

/**
 * The drawing before it has a scale: things on the ground (inches, y north) with pens by name.
 * `explode` turns them into atoms; only there is decided where ticks and letters go.
 */
export type Primitive =
  | {
      readonly kind: 'polyline';
      readonly points: readonly SitePoint[];
      readonly closed: boolean;
      readonly pen: PenName;
    }
  | {
      readonly kind: 'area';
      readonly points: readonly SitePoint[];
      readonly ink: Ink;
      readonly opacity: number;
      readonly hatch: 'none' | Hatch;
    }
  /**
   * `radius` in inches on the ground; `least` is the smallest radius on paper, in paper inches, as
   * far as the next of its kind, `apart` inches off on the ground, leaves room for it.
   */
  | {
      readonly kind: 'circle';
      readonly centre: SitePoint;
      readonly radius: number;
      readonly least: number;
      readonly apart?: number;
      readonly pen: PenName | null;
      readonly ink: Ink | null;
    }
  | {
      readonly kind: 'arc';
      readonly centre: SitePoint;
      readonly radius: number;
      readonly start: Radians;
      readonly sweep: Radians;
      readonly pen: PenName;
    }
  /** Fence as drafting draws it: long dashes with a sign between that says what it is. */
  | {
      readonly kind: 'fence';
      readonly of: Infill['kind'];
      readonly points: readonly SitePoint[];
      readonly closed: boolean;
      readonly pen: PenName;
    }
  /**
   * `size` and `rise` in paper inches: the clear distance from the point to the letters, square to
   * the text, negative below; 0 puts the middle of the text on the point. A line break starts a
   * new line. Text that finds no room near its point is led out to; `far` says whether it is left
   * out instead, or led out rather than lie on a line. With `beside` it wishes to stand off its
   * point to that side, one of a row that keeps to it. `apart` is the way to the next of a row of texts, inches on the ground: where the row would
   * run together the text is left out. `on` are places on its own line, where that can be broken for it. `name` is what a text that was left out is called, where it
   * does not say for itself what it belongs to.
   */
  | {
      readonly kind: 'text';
      readonly at: SitePoint;
      readonly text: string;
      readonly size: number;
      readonly rise: number;
      readonly angle: Radians;
      readonly ink: Ink;
      readonly weight: 'regular' | 'bold';
      readonly far?: 'leave out' | 'rather';
      readonly beside?: Beside;
      readonly apart?: SitePoint;
      readonly on?: readonly OnLine[];
      readonly name?: string;
      /** What a reader who touches it is led to: an anchor of the set. */
      readonly to?: string;
    }
  /**
   * A circle that says where a detail is drawn: its number over that of its sheet. It stands off
   * its place with a leader to it, and leads a reader `to` the anchor of that detail.
   */
  | {
      readonly kind: 'bubble';
      readonly at: SitePoint;
      readonly detail: string;
      readonly sheet: string;
      readonly to: string;
    }
  /**
   * A chain of dimensions along a straight line, `off` paper inches to the left of its direction
   * (negative: to the right). One text for each piece between two points. Where the texts of a
   * group do not fit, the group's own is written once for the pieces `from` up to, not including,
   * `to`. `name` says which chain was meant where not even the total finds room; `elsewhere` is
   * written beside a total without its pieces, and says where those are found. `stretches` are pieces
   * of a tier between bays and total: from terminal post to terminal post. Where that is written the bays
   * say the first line of their texts alone.
   */
  | {
      readonly kind: 'dimension chain';
      readonly points: readonly SitePoint[];
      readonly texts: readonly string[];
      readonly total: string | null;
      readonly off: number;
      readonly groups?: readonly ChainGroup[];
      readonly stretches?: readonly Omit<ChainGroup, 'shorter'>[];
      readonly name?: string;
      readonly elsewhere?: string;
    }
  /** A small mark of one size on any paper, `off` inches on the ground to the upper right of its place. */
  | {
      readonly kind: 'sign';
      readonly sign: SignName;
      readonly at: SitePoint;
      readonly off: number;
    }
  | {
      readonly kind: 'flag';
      readonly at: SitePoint;
      readonly level: 'stop' | 'settle' | 'caution';
    };

/** A place on a line for its name: which way the line runs, and how much of it is straight there, ground inches. */
export interface OnLine {
  readonly at: SitePoint;
  readonly angle: Radians;
  readonly long: number;
}

/** A side of a point: a unit vector on the ground, and how far that way is taken, ground inches. */
export interface Beside {
  readonly way: SitePoint;
  readonly taken: number;
}

/** Pieces of a chain that can be dimensioned together, such as equal bays. */
export interface ChainGroup {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** What is written where that is too long. */
  readonly shorter?: string;
}
