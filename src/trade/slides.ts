import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

const practice = (text: string): Source => ({
  text: phrase`${text}: common practice, no published source`,
  status: 'practice',
});

/** How much of a leaf that rolls stays behind its first roller post, at least. */
export const leastCounterbalance = {
  /** Of the width that the leaf closes. */
  share: 0.5,
  /** Inches, however narrow the opening. */
  least: inches(48),
  source: practice(phrase`counterbalance of at least half the opening, and 4 ft`),
} as const;

/** The least overhang of a leaf for the opening that it closes, inches. */
const overhangRows = [
  [120, 78],
  [168, 90],
  [264, 120],
  [360, 144],
] as const;

export const overhangSource: Source = {
  text: phrase`ASTM F1184 Class 2 overhang; from memory`,
  status: 'memory',
};

/** The overhang of the table for an opening, inches; null for one wider than the table goes, 30 ft. */
export const overhangFor = (closes: Inches): Inches | null => {
  const row = overhangRows.find(([upTo]) => closes <= upTo);
  return row === undefined ? null : inches(row[1]);
};

/** The widest opening that one leaf closes, inches; two leaves that meet close twice as much. */
export const widestSlide = {
  each: inches(384),
  source: practice(phrase`about 32 ft for one leaf that rolls, 64 ft for two`),
} as const;

/** A slide to begin with, all in inches; everything in it can be changed. */
export interface ProposedSlide {
  readonly overlap: Inches;
  readonly counterbalance: Inches;
  readonly rollers: Inches;
  readonly behind: Inches;
  readonly source: Source;
}

const overlap = inches(6);
const behind = inches(6);
/** From the end of the tail to the second roller post, so that the leaf is on it when closed. */
const tail = inches(6);

/** The least counterbalance for a leaf that closes a width, inches. */
export const counterbalanceFor = (closes: Inches): Inches =>
  inches(Math.max(leastCounterbalance.least, closes * leastCounterbalance.share));

/** To the next half inch, that it can be set with a tape. */
const roundedUp = (length: Inches): Inches => inches(Math.ceil(length * 2 - 1e-9) / 2);

const withTail = (counterbalance: Inches): ProposedSlide => ({
  overlap,
  counterbalance,
  rollers: inches(counterbalance - tail),
  behind,
  source: practice(phrase`meshed part 6 in longer than the opening, roller posts behind the fence`),
});

/**
 * The slide of a leaf that is there, by its length out to out, inches: as much of it as may be
 * closes the opening, its counterbalance on the half inch. Null for a leaf that its counterbalance and overlap would use up.
 */
export const slideOfLeaf = (leaf: Inches): ProposedSlide | null => {
  // where half of what it closes is over the least
  const long = (leaf - overlap) / (1 + leastCounterbalance.share);
  const short = leaf - overlap - leastCounterbalance.least;
  const closes = Math.min(long, short);
  return closes > 0 ? withTail(roundedUp(counterbalanceFor(inches(closes)))) : null;
};

/** The slide of one leaf that closes a width, inches. */
export const slideFor = (closes: Inches): ProposedSlide => withTail(counterbalanceFor(closes));
