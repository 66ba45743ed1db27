import type { Primitive } from '../../drawing/primitive.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { DxfLayer } from './dxfLayers.ts';
import { infillLines } from './dxfLineTypes.ts';
import type { DxfCorner, DxfThing } from './dxfThing.ts';

const cornersOf = (points: readonly SitePoint[]): DxfCorner[] =>
  points.map((at) => ({ at, bow: 0 }));

/**
 * What the plan draws, line by line as it draws it, on a layer of a DXF. Names, fills and signs are left
 * out, and dots, which have a size on paper alone: a DXF has those of its own.
 */
export const drawnThings = (drawn: readonly Primitive[], layer: DxfLayer): DxfThing[] =>
  drawn.flatMap((one): DxfThing[] => {
    switch (one.kind) {
      case 'polyline':
        return [{ kind: 'path', layer, corners: cornersOf(one.points), closed: one.closed }];
      case 'fence': {
        const { points, closed, of } = one;
        return [{ kind: 'path', layer, corners: cornersOf(points), closed, line: infillLines[of] }];
      }
      case 'circle':
        return one.radius === 0
          ? []
          : [{ kind: 'circle', layer, at: one.centre, radius: one.radius }];
      case 'arc': {
        const { centre: at, radius, start, sweep } = one;
        return [{ kind: 'arc', layer, at, radius, start, sweep }];
      }
      default:
        return [];
    }
  });
