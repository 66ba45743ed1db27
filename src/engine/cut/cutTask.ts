/** Pieces of one length, in whole steps of the tape that they are marked with. */
export interface CutLength {
  readonly length: number;
  readonly count: number;
}

/**
 * What has to be cut, and of what. All lengths are whole steps, such as eighths of an inch: sticks rounded
 * down to one, pieces and what the saw takes (`kerf`) rounded up.
 */
export interface CutTask {
  /** No two of one length; counts from 1. */
  readonly pieces: readonly CutLength[];
  /** A stick as it is bought, as many as are wanted. */
  readonly stick: number;
  /** What is left of earlier jobs, used before a stick is bought; no two of one length. */
  readonly offcuts: readonly CutLength[];
  readonly kerf: number;
}

/** One way to cut a stick, and how often it is cut so. */
export interface CutWay {
  readonly from: 'bought' | 'offcut';
  readonly stick: number;
  readonly times: number;
  /** How many of each of the task's pieces, in their order. */
  readonly counts: readonly number[];
}

/** How a task is cut. */
export interface CutPlan {
  readonly ways: readonly CutWay[];
  /** Sticks to be bought. */
  readonly bought: number;
  /** Fewer than this nobody can buy: the bound is proven. */
  readonly least: number;
  /** The pieces, by their places in the task, that are longer than any stick: they are in no way. */
  readonly tooLong: readonly number[];
}
