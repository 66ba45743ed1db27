import type { SitePoint } from '../../geometry/point.ts';
import type { Selection } from '../../store/selection.ts';

/** One thing of the yard in words. */
export interface ListRow {
  /** The same thing keeps its key while other things change; unique in a list. */
  readonly key: string;
  /** What it is and its figures, in one line. */
  readonly words: string;
  /** What is selected with it. */
  readonly selection: NonNullable<Selection>;
  /** Where on the ground the pad looks at it; null for a thing that is not at one place. */
  readonly at: SitePoint | null;
  /** What belongs to it, such as the legs of a fence line. */
  readonly rows: readonly ListRow[];
}

/** Things of one sort under their heading. */
export interface ListGroup {
  readonly key:
    | 'lines'
    | 'marks'
    | 'posts'
    | 'features'
    | 'utilities'
    | 'notes'
    | 'readings'
    | 'shots'
    | 'pictures'
    | 'flags';
  readonly title: string;
  readonly rows: readonly ListRow[];
}

/** A row and all that belong to it, in the order in which they are read. */
export const withAllRows = (row: ListRow): readonly ListRow[] => [
  row,
  ...row.rows.flatMap(withAllRows),
];
