/** One `--name` of a verb, as data: the reader, the usage line and `help` all use it. */
export interface Option {
  readonly name: string;
  /** The word that stands for the value, such as `LOW..HIGH`; null for a switch. */
  readonly value: string | null;
  readonly needed: boolean;
  /** May be given more than once. */
  readonly repeats: boolean;
  readonly does: string;
}
