import type { SitePoint } from '../../geometry/point.ts';
import type { Radians } from '../../units/radians.ts';
import type { DxfLayer } from './dxfLayers.ts';
import type { DxfLineType } from './dxfLineTypes.ts';

/** A corner of a line and the bow of the leg to the next, inches, left of the way above zero. */
export interface DxfCorner {
  readonly at: SitePoint;
  readonly bow: number;
}

/**
 * A length from one point to another, aligned with both: its line stands `off` inches to the left of the
 * way, below zero to the right. `text` is as the sheets write it, over the line as one reads it, or under.
 */
export interface DxfDimension {
  readonly from: SitePoint;
  readonly to: SitePoint;
  readonly off: number;
  readonly text: string;
  readonly stands: 'over' | 'under';
}

/** One thing on a layer of a DXF, in inches, x east, y north; a path may have a line type that is not its layer's. */
export type DxfThing = { readonly layer: DxfLayer } & (
  | {
      readonly kind: 'path';
      readonly corners: readonly DxfCorner[];
      readonly closed: boolean;
      readonly line?: DxfLineType;
    }
  | { readonly kind: 'circle'; readonly at: SitePoint; readonly radius: number }
  | {
      readonly kind: 'arc';
      readonly at: SitePoint;
      readonly radius: number;
      readonly start: Radians;
      readonly sweep: Radians;
    }
  | { readonly kind: 'point'; readonly at: SitePoint; readonly z: number }
  | { readonly kind: 'text'; readonly at: SitePoint; readonly text: string }
  | ({ readonly kind: 'dimension' } & DxfDimension)
);
