import { z } from './z.ts';
import { angle, positiveLength, ratio } from './quantities.ts';
import { inches } from '../units/inches.ts';
import { fromDegrees } from '../units/radians.ts';
import type { Frozen } from './frozen.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * How far a reading is trusted that nobody has said more of, as one standard deviation: lengths in
 * inches, angles in radians. A tape is trusted to `tapeLeast` and `tapeShare` of its length together.
 */
export const trustsSchema = z.strictObject({
  tapeLeast: positiveLength,
  tapeShare: ratio,
  square: angle.refine((value) => value > 0, phrase`an angle above zero`),
  straight: positiveLength,
  offset: positiveLength,
  bearing: angle.refine((value) => value > 0, phrase`an angle above zero`),
});

export type Trusts = Frozen<z.infer<typeof trustsSchema>>;

/**
 * A steel tape pulled by hand over grass (1/4 in, and 1/2 in more for each 100 ft), corners squared
 * by eye along walls, a hand compass. Common practice, no published source.
 */
export const usualTrusts: Trusts = {
  tapeLeast: inches(1 / 4),
  tapeShare: 1 / 2400,
  square: fromDegrees(1 / 2),
  straight: inches(1 / 2),
  offset: inches(1 / 2),
  bearing: fromDegrees(1),
};
