import { phrase } from '../../phrases/phrase.ts';

/** Heights of a profile are drawn larger than lengths by one of these; ours, the usual round ones. */
export const exaggerations = [10, 5, 4, 2, 1] as const;

/** Drawn to the scale of its lengths, a profile may take so many times the room that it should. */
const trueAllowance = 2;

/**
 * How many times larger heights are drawn than lengths: the largest round number by which ground
 * and posts (`rise`, paper inches at the scale of the lengths) take no more than `most` paper
 * inches. At 1 they may take twice as much; steeper than that they are drawn at the first 1/n that
 * fits it.
 */
export const exaggeration = (rise: number, most: number): number =>
  exaggerations.find((times) => rise * times <= most) ??
  1 / Math.max(1, Math.ceil(rise / (most * trueAllowance) - 1e-9));

/** An exaggeration in words, as it stands beside a profile. */
export const exaggerationText = (times: number): string => {
  if (times === 1) return phrase`heights and lengths to one scale`;
  return times > 1
    ? phrase`heights drawn ${times} times as large as lengths`
    : phrase`heights drawn 1/${Math.round(1 / times)} as large as lengths`;
};
