/** The entries of a flat map by id, its keys typed as the ids that they are. */
export const entriesOf = <Id extends string, T>(map: Readonly<Record<Id, T>>): [Id, T][] =>
  Object.entries(map) as [Id, T][];
