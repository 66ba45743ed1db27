/** What a book of the company holds: entries by their ids, each checked before it goes in. */
export interface BookKind<Id extends string, Entry> {
  /** What lines about it call it, such as `hardware book`. */
  readonly called: string;
  /** The most entries it holds. */
  readonly most: number;
  /** A text as an id. RangeError of one line for one that is none. */
  readonly checkedId: (id: string) => Id;
  /** A value as an entry. RangeError of one line, behind the place `where`, for one that is none. */
  readonly checkedEntry: (entry: unknown, where: readonly string[]) => Entry;
  /** Under what name, and as of which version of the file format, the device keeps an entry. */
  readonly field: string;
  readonly version: number;
}
