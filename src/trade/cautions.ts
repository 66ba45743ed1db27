import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** One thing that every sheet says, whatever is drawn on it. */
export interface Caution {
  readonly text: string;
  /** The rule it rests on; null where it is plain advice. */
  readonly source: Source | null;
}

/** What stands wherever a boundary is drawn or worked out. */
export const boundaryCaution: Caution = {
  text: phrase`Boundaries are drawn as they were told, called or taped: this is no boundary survey. Where the property ends is for a licensed land surveyor to say.`,
  source: null,
};

/** What stands wherever a hole is dug. */
export const digCaution: Caution = {
  text: phrase`Call before you dig (811 in the United States) and wait until every buried line is marked. Dig by hand near the marks. Privately owned lines are not marked by that call.`,
  source: { text: '29 CFR 1926.651(b)', status: 'published' },
};

/** Who comes before anything that is printed. */
export const codesCaution: Caution = {
  text: phrase`Local codes, permits and the owner of the land come before anything on this sheet; what they leave open is for a licensed professional to decide.`,
  source: null,
};

/** What figures of strength are, and what they are not. */
export const figuresCaution: Caution = {
  text: phrase`Figures compare a plan with the rules named beside them. They approve nothing and do not replace a design for the soil, wind and loads of this place.`,
  source: null,
};

/** In the order in which sheets print them. */
export const cautions: readonly Caution[] = [
  digCaution,
  codesCaution,
  {
    text: phrase`Measure the width of every leaf, at top and bottom, and what every hinge and latch takes up before a gate post is set. The size a gate is sold by is not its opening.`,
    source: null,
  },
  boundaryCaution,
  figuresCaution,
];
