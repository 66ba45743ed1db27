/** What reading a text gives: the value, or one line that says what, where and what was expected. */
export type Parsed<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

/** A text that was read. */
export const read = <T>(value: T): Parsed<T> => ({ ok: true, value });

/** A text that could not be read, with the one line that says why. */
export const unread = (reason: string): Parsed<never> => ({ ok: false, reason });
