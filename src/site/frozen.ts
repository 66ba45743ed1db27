/** A value of which no part may be written to; the compiler's half of an immutable document. */
export type Frozen<T> = T extends string | number | boolean | null | undefined
  ? T
  : { readonly [K in keyof T]: Frozen<T[K]> };
