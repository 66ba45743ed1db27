import type { Inches } from '../units/inches.ts';

/** One thing that takes up width in an opening, in inches, and where its figure came from. */
export interface Term {
  readonly role: 'leaf' | 'hinge' | 'latch';
  readonly label: string;
  readonly low: Inches;
  readonly planned: Inches;
  readonly high: Inches;
  readonly source: string;
}

/** A clear width between the inside faces of two gate posts, with the working that led to it. */
export interface Opening {
  readonly terms: readonly Term[];
  /** The sum of the planned terms: what the crew holds. */
  readonly target: Inches;
  /** The opening works from here to there whatever the true size of the uncertain terms. */
  readonly holdsFrom: Inches;
  readonly holdsTo: Inches;
}
