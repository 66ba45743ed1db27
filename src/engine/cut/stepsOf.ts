import type { Inches } from '../../units/inches.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

/** A share of a step that a length is over or under by how it was added up. */
const forgiven = 1e-6;

/** A length in whole steps of a tape, not less than it is: for what has to be there. */
export const stepsUp = (length: Inches, style: LengthStyle): number =>
  Math.ceil(length / lengthOfSteps(1, style) - forgiven);

/** A length in whole steps of a tape, not more than it is: for what there is. */
export const stepsDown = (length: Inches, style: LengthStyle): number =>
  Math.floor(length / lengthOfSteps(1, style) + forgiven);
