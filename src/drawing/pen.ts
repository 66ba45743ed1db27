import type { Ink } from './ink.ts';

/** How a stroke is drawn: width and dashes in paper inches. */
export interface Pen {
  readonly ink: Ink;
  readonly width: number;
  /** On, off, on, off …; empty for a whole line. */
  readonly dash: readonly number[];
}
