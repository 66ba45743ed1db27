import type { SitePoint } from '../../geometry/point.ts';
import type { Radians } from '../../units/radians.ts';
import type { DxfLayer } from './dxfLayers.ts';

/** A corner of a line and the bow of the leg to the next, inches, left of the way above zero. */
export interface DxfCorner {
  readonly at: SitePoint;
  readonly bow: number;
}

/** One thing on a layer of a DXF, in inches, x east, y north. */
export type DxfThing = { readonly layer: DxfLayer } & (
  | { readonly kind: 'path'; readonly corners: readonly DxfCorner[]; readonly closed: boolean }
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
);
