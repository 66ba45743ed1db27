import type { Feature } from '../site/feature.ts';
import type { FenceSpec } from '../site/fenceSpec.ts';
import type { Gate, Leaf } from '../site/gate.ts';
import type { Hardware } from '../site/hardware.ts';
import type { HardwareId, SpecId } from '../site/ids.ts';
import type { Inches } from '../units/inches.ts';

/** A part under the id by which a site will carry it; a site that carries the id keeps its own. */
export interface PartPlan {
  readonly id: HardwareId;
  readonly hardware: Hardware;
}

/** A leaf of the next gate: one width out to out of its frame, in inches. */
export interface LeafPlan extends Pick<Leaf, 'from'> {
  readonly width: Inches;
  readonly hinge: PartPlan;
}

/** What the next gate will be made of. */
export interface GatePlan extends Pick<Gate, 'label' | 'opens' | 'hingedAt' | 'nominal' | 'post'> {
  /** One or two, the one nearer to the start of the leg first. Widths in inches. */
  readonly leaves: readonly LeafPlan[];
  readonly latch: PartPlan;
}

/** How the next fence line will be built. */
export interface FencePlan {
  readonly id: SpecId;
  readonly spec: FenceSpec;
}

type Utility = Extract<Feature, { kind: 'utility' }>;
type HeightZone = Extract<Feature, { kind: 'height zone' }>;
type Tree = Extract<Feature, { kind: 'tree' }>;

/** How high fence may stand in ground that is drawn next, inches over it. */
export type HeightPlan = Pick<HeightZone, 'solid' | 'open'>;

/** What the next thing drawn will be: chosen beforehand, kept until chosen anew. */
export interface Plans {
  readonly gate: GatePlan;
  readonly fence: FencePlan;
  readonly utility: Pick<Utility, 'service' | 'run' | 'width' | 'tolerance'>;
  readonly heights: Readonly<Record<HeightZone['of'], HeightPlan>>;
  readonly tree: Pick<Tree, 'trunk' | 'roots'>;
}
