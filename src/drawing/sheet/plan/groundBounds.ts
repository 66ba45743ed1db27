import { boundsOf, type Bounds } from '../../../geometry/bounds.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import type { Primitive } from '../../primitive.ts';

const pointsOf = (primitive: Primitive): readonly SitePoint[] => {
  switch (primitive.kind) {
    case 'polyline':
    case 'area':
    case 'fence':
    case 'dimension chain':
      return primitive.points;
    case 'circle':
    case 'arc': {
      const { centre, radius } = primitive;
      return [
        { x: centre.x - radius, y: centre.y - radius },
        { x: centre.x + radius, y: centre.y + radius },
      ];
    }
    case 'text':
    case 'bubble':
    case 'sign':
    case 'flag':
      return [primitive.at];
  }
};

/** The ground that a drawing covers, its letters aside, inches; null for an empty one. */
export const groundBounds = (primitives: readonly Primitive[]): Bounds | null =>
  boundsOf(primitives.flatMap(pointsOf));
