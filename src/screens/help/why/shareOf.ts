/** How many times one length goes into another, to a hundredth, as a person says it. */
export const shareOf = (whole: number, part: number): string =>
  String(Math.round((100 * whole) / part) / 100);
