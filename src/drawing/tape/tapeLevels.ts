/**
 * Heights on a tape strip, paper inches from its top: the names over the fence, the fence with its
 * posts, the body of the tape, and where the readings hang from.
 */
export const tapeLevels = {
  gateName: 0.12,
  tags: 0.44,
  fence: 0.68,
  bodyTop: 0.86,
  bodyBottom: 1.16,
  readings: 1.24,
} as const;
