/** A sum of a few of many unknowns, each by its column and times a value. */
export interface Combination {
  readonly columns: readonly number[];
  readonly values: readonly number[];
}
