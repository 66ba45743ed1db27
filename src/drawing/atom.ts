import type { PaperPoint } from '../geometry/point.ts';
import type { Radians } from '../units/radians.ts';
import type { Ink } from './ink.ts';
import type { Outline } from './outline.ts';
import type { Pen } from './pen.ts';

/**
 * What every painter paints, in order, and all that it needs to know. Paper inches, y down.
 * On the screen the paper is the pad: `screen/` scales a paper inch to CSS pixels.
 */
export type Atom = Stroke | Fill | Text | Clip;

export interface Stroke {
  readonly do: 'stroke';
  readonly pen: Pen;
  readonly outline: Outline;
}

/** Even-odd fill. `opacity` from 0 to 1. */
export interface Fill {
  readonly do: 'fill';
  readonly ink: Ink;
  readonly opacity: number;
  readonly outline: Outline;
}

/**
 * The cell of a table that a text stands in, for those who hear a page. Rows count from 0, the head; a name over
 * some rows stands halfway between two. `columns` is how many the table has, `spans` how many of them this has.
 */
export interface Cell {
  readonly is: 'head' | 'body';
  readonly row: number;
  readonly column: number;
  readonly columns: number;
  readonly spans: number;
}

export interface Text {
  readonly do: 'text';
  readonly text: string;
  /** The anchor point on the baseline, or on the middle of the capitals. */
  readonly at: PaperPoint;
  /** Height of the letters' em in inches. */
  readonly size: number;
  /** Counter-clockwise as seen on the paper. */
  readonly angle: Radians;
  readonly align: 'left' | 'middle' | 'right';
  readonly baseline: 'foot' | 'middle';
  readonly weight: 'regular' | 'bold';
  readonly ink: Ink;
  /** A halo of the paper's colour under the letters, so that lines do not cut through them. */
  readonly halo: 'none' | 'paper';
  readonly cell?: Cell;
}

/** Atoms of which only what lies within the outline shows. */
export interface Clip {
  readonly do: 'clip';
  readonly outline: Outline;
  readonly atoms: readonly Atom[];
}
