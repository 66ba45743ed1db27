import type { SitePoint } from '../geometry/point.ts';
import type { Inches } from '../units/inches.ts';
import type { Footing } from './ground.ts';
import type { Snap } from './snap.ts';

/**
 * A point that was chosen, and what it stands on, null on open ground; for the next point of a chain
 * also what was typed of how far it is from the last.
 */
export interface Stand {
  readonly point: SitePoint;
  readonly on: Footing | null;
  readonly typed?: Inches;
}

/** What is kept of a snap once the hand has decided for it, with the length that was typed. */
export const standOf = ({ point, on }: Snap, typed: Inches | null = null): Stand =>
  typed === null ? { point, on } : { point, on, typed };
