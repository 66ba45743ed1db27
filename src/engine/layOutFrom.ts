import type { Site } from '../site/site.ts';
import { newCarry, type Pieces } from './carry/carry.ts';
import { flagsOf } from './checks/flagsOf.ts';
import type { Layout } from './layout.ts';
import { windBays } from './structure/windBays.ts';
import { surveyOf } from './survey/surveyOf.ts';
import { layLines } from './posts/layLines.ts';

/** A layout, and what the next one may take over from it. */
export interface Laying {
  readonly layout: Layout;
  readonly pieces: Pieces;
}

/**
 * Everything that follows from a site, as `layOutSite` has it. What is made of the same as in the
 * laying before (of the site before an edit, or of any other) is taken over from that, or from another: runs, posts
 * and gates that an edit does not touch are the very same objects. The result is the same from any
 * laying and from none.
 */
export const layOutFrom = (
  drawn: Site,
  before: Laying | null,
  other: Laying | null = null,
): Laying => {
  const carry = newCarry(before?.pieces, other?.pieces);
  const site = windBays(drawn, carry);
  const laid = layLines(site, carry);
  const { lines, posts, gates, ground } = laid;
  const survey = surveyOf(site, carry, laid);
  const flags = flagsOf(site, { ...laid, survey }, carry);
  return { layout: { lines, posts, gates, ground, survey, flags }, pieces: carry.pieces };
};
