import type { Bounds } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { FeatureId } from '../../site/ids.ts';

/** Ground in which no part of a hole may lie. Lengths in inches. */
export interface KeepOut {
  readonly id: FeatureId;
  /** `joint`: the edge of paving that a fence passes, which holes do not cut. */
  readonly kind: 'utility' | 'roots' | 'keep-out' | 'joint';
  /** Nothing within `radius` of these may be dug; a segment without length is a point. */
  readonly edges: readonly Segment<'site'>[];
  readonly radius: number;
  /** Nor what lies within this ring; null for none. */
  readonly ring: readonly SitePoint[] | null;
  /** Of all of it, the radius reckoned in. */
  readonly bounds: Bounds;
}
