/** The price list that was brought last, as text: it is kept on the device and goes with no site. */
export interface PricesAtHand {
  readonly name: string;
  readonly text: string;
}

/** More than any price list is long, in characters. */
export const mostPriceText = 2_000_000;

/** What a device kept of it; null where it kept none, or in another form. */
export const readPricesAtHand = (value: unknown): PricesAtHand | null => {
  if (typeof value !== 'object' || value === null) return null;
  const { name, text } = value as Readonly<Record<keyof PricesAtHand, unknown>>;
  if (typeof name !== 'string' || typeof text !== 'string') return null;
  return text.length > mostPriceText ? null : { name, text };
};
