import type { Bounds } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { FeatureId, GateId, LineId } from '../../site/ids.ts';

/** What a leaf could meet. */
export type Met =
  | { readonly kind: 'building' | 'boundary' | 'pool' | 'paving' | 'tree'; readonly id: FeatureId }
  | { readonly kind: 'fence'; readonly id: LineId }
  | { readonly kind: 'gate'; readonly id: GateId };

/** A thing on the ground by its edges; a trunk is a disc. Bounds hold all of it. */
export interface Obstacle {
  readonly met: Met;
  readonly edges: readonly Segment<'site'>[];
  readonly disc: { readonly centre: SitePoint; readonly radius: number } | null;
  /** The corners of ground that is closed round; null for the rest. */
  readonly ring: readonly SitePoint[] | null;
  readonly bounds: Bounds;
}

const solid: readonly Met['kind'][] = ['building', 'tree', 'fence', 'gate'];

/** True for what stops a leaf; the rest lies on the ground under it. */
export const isSolid = ({ met }: Pick<Obstacle, 'met'>): boolean => solid.includes(met.kind);
