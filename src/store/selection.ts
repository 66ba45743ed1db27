import type { PostId } from '../engine/post.ts';
import type {
  FeatureId,
  GateId,
  LineId,
  MarkId,
  ObservationId,
  PinId,
  ShotId,
  UnderlayId,
  VertexId,
} from '../site/ids.ts';

/** The one thing that the card, the tape strip and the keys act on; null for nothing. */
export type Selection =
  | { readonly kind: 'line'; readonly id: LineId }
  | { readonly kind: 'leg'; readonly line: LineId; readonly id: VertexId }
  | { readonly kind: 'gate'; readonly id: GateId }
  | { readonly kind: 'feature'; readonly id: FeatureId }
  | { readonly kind: 'mark'; readonly id: MarkId }
  /** A line or pull post of a run; one that is held is `post:` and its pin, placed or not. */
  | { readonly kind: 'post'; readonly id: PostId }
  /** Ground that is kept clear of holes. */
  | { readonly kind: 'pin'; readonly id: PinId }
  | { readonly kind: 'shot'; readonly id: ShotId }
  /** A tape across open ground; from the list of the yard any reading. */
  | { readonly kind: 'tape'; readonly id: ObservationId }
  /** A picture under the drawing. */
  | { readonly kind: 'underlay'; readonly id: UnderlayId }
  | null;
