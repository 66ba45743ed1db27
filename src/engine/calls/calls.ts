import type { Course } from './course.ts';

/** To what a course belongs: the way to the point of beginning, the lot, or what is told after it. */
export type CallPart = 'tie' | 'lot' | 'after';

/** What was understood of one piece of a text. */
export type Understood =
  | { readonly kind: 'course'; readonly course: Course; readonly part: CallPart }
  /** Where the calls begin, and what is there. */
  | { readonly kind: 'start'; readonly at: string }
  /** The area that the deed says, square inches. */
  | { readonly kind: 'area'; readonly area: number }
  /** Not understood, and it would be a course: a side is missing. */
  | { readonly kind: 'fault'; readonly reason: string }
  /** Not understood, and nothing in it could be drawn. */
  | { readonly kind: 'words'; readonly reason: string };

/** One piece of a text of calls, with what came of it. */
export interface CallPiece {
  /** The line in which it begins, counted from 1. */
  readonly line: number;
  readonly text: string;
  readonly found: Understood;
  /** What else in it is worth a look, a line each; each lacks its subject. */
  readonly doubts: readonly string[];
}

/** A text of calls as it was read: every piece of it, and the courses in their order. */
export interface Calls {
  readonly pieces: readonly CallPiece[];
  /** Round the lot. */
  readonly courses: readonly Course[];
  /** From the point of commencing to the point of beginning; no sides of the lot. */
  readonly ties: readonly Course[];
  /** What is at the point of beginning; empty where nothing is told. */
  readonly start: string;
  /** Whether the text says that the last course comes back to the point of beginning. */
  readonly ends: 'at the beginning' | 'untold';
  /** The area that the text says, square inches; null where it says none. */
  readonly area: number | null;
}
