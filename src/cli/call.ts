/** A command line as it was read: places in their order, every option with its values. */
export interface Call {
  readonly places: readonly string[];
  /** Values by option name, in the order given; a switch that was given has one empty value. */
  readonly values: ReadonlyMap<string, readonly string[]>;
}

/** The value of an option that is given once at most; null where it was not given. */
export const valueOf = (call: Call, name: string): string | null =>
  call.values.get(name)?.[0] ?? null;

/** All values of an option in the order given; none where it was not given. */
export const valuesOf = (call: Call, name: string): readonly string[] =>
  call.values.get(name) ?? [];

/** Whether a switch was given. */
export const isGiven = (call: Call, name: string): boolean => call.values.has(name);
