import type { Mend } from './mend.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { FeatureId, GateId, LineId, MarkId, ShotId, VertexId } from '../site/ids.ts';

/** Something that the plan must settle, fix or warn of, planted at a place on the drawing. */
export interface Flag {
  /** `stop`: do not build this. `settle`: an answer is missing. `caution`: know this. */
  readonly level: 'stop' | 'settle' | 'caution';
  /** Short name of the rule that planted it, such as `gate wider than leg`. */
  readonly rule: string;
  readonly place: FlagPlace;
  readonly at: SitePoint;
  /** One line: what, how much, what was expected. */
  readonly message: string;
  /** The same in English, where another language is spoken: what an acceptance is kept and compared by. */
  readonly said?: string;
  /** What would take it away in one step, where there is one. */
  readonly mend?: Mend;
}

/** What a flag stands on; tapping the flag selects it. */
export type FlagPlace =
  | { readonly kind: 'gate'; readonly id: GateId }
  | { readonly kind: 'line'; readonly id: LineId }
  | { readonly kind: 'leg'; readonly line: LineId; readonly id: VertexId }
  | { readonly kind: 'mark'; readonly id: MarkId }
  | { readonly kind: 'shot'; readonly id: ShotId }
  | { readonly kind: 'feature'; readonly id: FeatureId };
