/** How long a bench may take: all of its rounds, or few. */
export interface Pace {
  readonly quick: boolean;
}

/** Milliseconds that a piece of work took, over all rounds. */
export interface Times {
  readonly median: number;
  readonly p95: number;
}

/** What came of a row: the project's figure over that of its reference. */
export interface Figure {
  /** The median of the project's figures over the median of the reference's. */
  readonly ratio: number;
  /** The same in both orders: the project's work first, the reference first. Equal where order means nothing. */
  readonly orders: readonly [oursFirst: number, theirsFirst: number];
  /** Null where the figure is no time. */
  readonly ours: Times | null;
  readonly theirs: Times | null;
  /** What else has to be known of it, in a few words. */
  readonly note: string;
}

/** A row of the bench: some work, what it is measured against in the same process or page, and the bar. */
export interface Row {
  readonly work: string;
  readonly against: string;
  /** The ratio that it shall not be over. */
  readonly bar: number;
  /** A quick bench leaves it out. */
  readonly only?: 'whole runs';
  readonly run: (pace: Pace) => Promise<Figure>;
}
