import type { Primitive } from '../drawing/primitive.ts';
import type { Layout } from '../engine/layout.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Site } from '../site/site.ts';
import type { Plans } from '../store/plans.ts';
import type { Selection } from '../store/selection.ts';
import type { Inches } from '../units/inches.ts';
import type { Radians } from '../units/radians.ts';
import type { Input } from './input.ts';

/**
 * What a tool may look at; it never sees the store, React or a canvas. An input is answered from the
 * committed document; preview and prompt see what is shown, the draft included.
 */
export interface Desk {
  readonly site: Site;
  readonly layout: Layout;
  readonly selection: Selection;
  /** What the next thing drawn will be. */
  readonly plans: Plans;
}

/** What a tool answers to one input. Absent parts stay as they are. */
export interface Answer<State> {
  readonly state: State;
  /** Shown while the gesture runs; dropped by `leave`, replaced by `commit`. */
  readonly draft?: Site | null;
  /** The finished edit, under the label that undo shows. */
  readonly commit?: { readonly site: Site; readonly label: string };
  readonly select?: Selection;
  /** What the next thing drawn will be, where this one changed that. */
  readonly plans?: Plans;
  /** One line for the hand: what is wrong or what comes next. */
  readonly say?: string;
}

/** The piece being drawn: where it starts, and the direction of the piece before it. */
export interface Piece {
  readonly from: SitePoint;
  readonly last: Radians | null;
}

/** A place for which a figure is to be typed, and the figure that is offered; inches. */
export interface Asked {
  /** A height has a sign, a length is above zero. */
  readonly what: 'height' | 'length';
  readonly at: SitePoint;
  readonly offered: Inches;
  /** Written on the form, on its field, and on the key that gives it up. */
  readonly words: { readonly form: string; readonly field: string; readonly drop: string };
}

/** Points that are being set one after the other: how many are set, of how many, and what is said of them. */
export interface Steps {
  readonly set: number;
  readonly of: number;
  readonly form: string;
}

/** A pure state machine: input in, answer out, and what to show while it is in a state. */
export interface Tool<State> {
  readonly idle: State;
  readonly on: (state: State, input: Input, desk: Desk) => Answer<State>;
  readonly preview: (state: State, desk: Desk) => readonly Primitive[];
  /** One line that says what to do next in this state. */
  readonly prompt: (state: State, desk: Desk) => string;
  /** The piece for which a length or bearing can be typed; absent or null where there is none. */
  readonly piece?: (state: State, desk: Desk) => Piece | null;
  /** The place for which a figure can be typed; absent or null where there is none. */
  readonly asked?: (state: State, desk: Desk) => Asked | null;
  /** The points that are being set; absent or null where none are. */
  readonly steps?: (state: State, desk: Desk) => Steps | null;
  /** What is left of a state when another tool is taken up; a chain being drawn is not lost. */
  readonly rest: (state: State) => State;
}
