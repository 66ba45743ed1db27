import type { HardwareId, LeafId } from '../site/ids.ts';
import type { Inches } from '../units/inches.ts';

/**
 * One thing that takes up width in an opening, in inches, and where its figure came from. Below
 * zero where it gives width back: a leaf that overlaps its posts.
 */
export interface Term {
  readonly role: 'leaf' | 'hinge' | 'latch' | 'stop' | 'overlap' | 'gap';
  /** The leaf or part of the site that it speaks of; null outside a site. */
  readonly of: LeafId | HardwareId | null;
  readonly label: string;
  readonly low: Inches;
  readonly planned: Inches;
  readonly high: Inches;
  /**
   * `uncertain`: its size lies somewhere from low to high; `adjustable`: it can be set anywhere
   * from low to high; `catch`: a latch, which catches at any gap from low to high.
   */
  readonly spread: 'uncertain' | 'adjustable' | 'catch';
  readonly source: string;
  /** The day of the measuring, as a person wrote it; may be empty. */
  readonly on: string;
}

/** A clear width between the inside faces of two gate posts, with the working that led to it. */
export interface Opening {
  readonly terms: readonly Term[];
  /** The sum of the planned terms: what the crew holds. */
  readonly target: Inches;
  /** For sure: the opening works from here to there whatever the uncertain terms are. */
  readonly holdsFrom: Inches;
  readonly holdsTo: Inches;
  /** Possible: outside this it works for no size of the uncertain terms. */
  readonly mayFrom: Inches;
  readonly mayTo: Inches;
  /**
   * Statistical: the uncertain terms' half spreads put together as the root of the sum of their
   * squares, which supposes that they are independent and centred. Between sure and possible.
   */
  readonly likelyFrom: Inches;
  readonly likelyTo: Inches;
}
