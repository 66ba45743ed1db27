import type { Primitive } from '../../../drawing/primitive.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Selection } from '../../../store/selection.ts';

/** What a hand can hold. */
export type Held = NonNullable<Selection>;

/**
 *   idle --press on a thing--> held --release--> idle
 *   held --release, where it was selected before--> idle, at what lies under it
 *   held --move beyond reach--> dragging --move--> dragging --release--> idle
 *   held, dragging --leave--> idle
 *
 * A selected leg that is taken by its knob is bowed instead of moved: `knob` says where that was.
 */
export type SelectState =
  /** `tapped` is what was tapped last, and how many things lie there. */
  | { readonly is: 'idle'; readonly tapped: { readonly what: Held; readonly of: number } | null }
  /** `from` is where the hand came down, `next` what lies under it for a tap on what was selected. */
  | {
      readonly is: 'held';
      readonly what: Held;
      readonly from: SitePoint;
      readonly of: number;
      readonly next: Held;
      readonly knob: SitePoint | null;
    }
  | {
      readonly is: 'dragging';
      readonly what: Held;
      readonly from: SitePoint;
      readonly knob: SitePoint | null;
      /** What the hand is drawn to, seen from where all stood before. */
      readonly guides: readonly Primitive[];
      /** The mark that the held one is joined to when it is let go; null for none. */
      readonly onto: MarkId | null;
    };
