import type { FeatureId, GateId, LineId, MarkId, VertexId } from '../site/ids.ts';

/** The one thing that the card, the tape strip and the keys act on; null for nothing. */
export type Selection =
  | { readonly kind: 'line'; readonly id: LineId }
  | { readonly kind: 'leg'; readonly line: LineId; readonly id: VertexId }
  | { readonly kind: 'gate'; readonly id: GateId }
  | { readonly kind: 'feature'; readonly id: FeatureId }
  | { readonly kind: 'mark'; readonly id: MarkId }
  | null;
