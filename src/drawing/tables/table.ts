/** One column of a table: its heading, where its cells stand, and its share of the width. */
export interface Column {
  readonly heading: string;
  readonly align: 'left' | 'right';
  readonly share: number;
  /** What stands in it, where something is decided by that. */
  readonly is?: 'run' | 'stretch' | 'above ground';
}

/** A table as texts, for sheets and for lists alike. Every row has a cell for each column. */
export interface Table {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  /** What each row belongs to, where sheets say so over the first of those that belong together. */
  readonly groups?: readonly string[];
}
