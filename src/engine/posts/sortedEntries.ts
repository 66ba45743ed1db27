const compareIds = <T>(a: readonly [string, T], b: readonly [string, T]): number =>
  a[0] < b[0] ? -1 : 1;

/** The entries of a map of the document in the order of their ids. */
export const sortedEntries = <Id extends string, T>(map: Readonly<Record<Id, T>>): [Id, T][] =>
  (Object.entries(map) as [Id, T][]).toSorted(compareIds);
