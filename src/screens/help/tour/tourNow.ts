import type { Selection } from '../../../store/selection.ts';
import type { Session } from '../../../store/session.ts';
import type { ToolId } from '../../../store/toolId.ts';
import type { TourSeen } from '../../../store/tour.ts';

/** The program as the tour looks at it. */
export interface TourNow {
  readonly seen: TourSeen;
  readonly screen: Session['screen'];
  readonly tool: ToolId;
  readonly selection: Selection;
  /** Whether a piece is being drawn, for which a length can be typed. */
  readonly drawing: boolean;
  /** How many flags stand. */
  readonly flags: number;
}
