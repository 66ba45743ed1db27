/**
 * Sizes of letters on sheets, the em in inches. Capitals are 0.7 em high: the smallest stand
 * 2.5 mm high, the least of ISO 3098 (from memory), and more than the 3/32 in of the US National CAD
 * Standard (from memory).
 */
export const letters = {
  small: 0.141,
  body: 0.145,
  strong: 0.17,
  heading: 0.22,
  title: 0.27,
} as const;

/** From one line of a paragraph to the next, in ems. */
export const lineSpacing = 1.3;
