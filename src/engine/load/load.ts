import type { CutTicket } from '../cut/cutTicket.ts';
import type { LoadLine } from '../loadLine.ts';

/** The cuts of one sort of stick or roll, and which line of the list they are of. */
export interface LoadTicket {
  readonly code: string;
  readonly item: string;
  /**
   * Rolls of fabric are joined by weaving, sticks of rail end to end, posts not at all, and lumber on a
   * post. Panels are cut one by one.
   */
  readonly kind: 'rail' | 'fabric' | 'post' | 'lumber' | 'panel';
  readonly ticket: CutTicket;
}

/** Everything that goes on the truck for a site, and how it is cut. */
export interface Load {
  readonly lines: readonly LoadLine[];
  readonly tickets: readonly LoadTicket[];
}
