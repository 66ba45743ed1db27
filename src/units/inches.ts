declare const unit: unique symbol;

/**
 * A length in inches, as a float64. Any whole number of 64ths of an inch (or any other
 * power of two) is exact in binary, so tape arithmetic never rounds.
 */
export type Inches = number & { readonly [unit]: 'in' };

/** Calls a plain number a length in inches. The only cast to `Inches`. */
export const inches = (value: number): Inches => value as Inches;

/** The sum of lengths in inches; 0 for none. */
export const sum = (lengths: readonly Inches[]): Inches =>
  inches(lengths.reduce<number>((total, length) => total + length, 0));
