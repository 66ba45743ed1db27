import type { SitePoint } from '../geometry/point.ts';
import type { Footing } from './ground.ts';
import type { Snap } from './snap.ts';

/** A point that was chosen, and what it stands on; null on open ground. */
export interface Stand {
  readonly point: SitePoint;
  readonly on: Footing | null;
}

/** What is kept of a snap once the hand has decided for it. */
export const standOf = ({ point, on }: Snap): Stand => ({ point, on });
