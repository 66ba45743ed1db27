import type { Bounds } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { pens } from '../pens.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { fenceOutline } from './fenceOutline.ts';
import { flagAtoms } from './flagAtoms.ts';
import { hatchLines } from './hatchLines.ts';
import { circleOutline, polylineOutline } from './polylineOutline.ts';
import { radiusOnPaper } from './radiusOnPaper.ts';
import { signAtoms } from './signAtoms.ts';
import { signOnPaper } from './signOnPaper.ts';

type Of<Kind extends Primitive['kind']> = Extract<Primitive, { kind: Kind }>;

const area = (
  { points, ink, opacity, hatch }: Of<'area'>,
  projection: Projection,
  window: Bounds | null,
): Atom[] => {
  const corners = points.map((point) => toPaper(projection, point));
  const outline = polylineOutline(corners, true);
  const lines = hatch === 'none' ? [] : hatchLines(corners, hatch, window);
  const hatching: Atom = { do: 'stroke', pen: { ink, width: 0.004, dash: [] }, outline: lines };
  return [
    ...(opacity > 0 ? [{ do: 'fill', ink, opacity, outline } as const] : []),
    ...(lines.length > 0 ? [{ do: 'clip', outline, atoms: [hatching] } as const] : []),
  ];
};

const circle = (primitive: Of<'circle'>, projection: Projection): Atom[] => {
  const { centre, pen, ink } = primitive;
  const size = radiusOnPaper(primitive, projection);
  const outline = circleOutline(toPaper(projection, centre), size);
  return [
    ...(ink === null ? [] : [{ do: 'fill', ink, opacity: 1, outline } as const]),
    ...(pen === null ? [] : [{ do: 'stroke', pen: pens[pen], outline } as const]),
  ];
};

const arc = ({ centre, radius, start, sweep, pen }: Of<'arc'>, projection: Projection): Atom[] => {
  const { x, y } = toPaper(projection, centre);
  const size = radius * projection.scale;
  const from = { x: x + size * Math.cos(start), y: y - size * Math.sin(start) };
  return [
    {
      do: 'stroke',
      pen: pens[pen],
      outline: [
        { go: 'move', ...from },
        { go: 'arc', x, y, radius: size, start, sweep },
      ],
    },
  ];
};

/**
 * What a primitive looks like on the paper, letters and dimensions aside: those find their places
 * together. Patterns are only worked out inside `window`.
 */
export const markAtoms = (
  primitive: Primitive,
  projection: Projection,
  window: Bounds | null,
): Atom[] => {
  const onPaper = (points: readonly SitePoint[]) =>
    points.map((point) => toPaper(projection, point));
  switch (primitive.kind) {
    case 'polyline':
    case 'fence': {
      const { points, closed, pen } = primitive;
      const outline =
        primitive.kind === 'fence'
          ? fenceOutline(onPaper(points), closed, { of: primitive.of, window })
          : polylineOutline(onPaper(points), closed);
      return outline.length === 0 ? [] : [{ do: 'stroke', pen: pens[pen], outline }];
    }
    case 'area':
      return area(primitive, projection, window);
    case 'circle':
      return circle(primitive, projection);
    case 'arc':
      return arc(primitive, projection);
    case 'sign':
      return signAtoms(primitive.sign, signOnPaper(primitive, projection));
    case 'flag':
      return flagAtoms(toPaper(projection, primitive.at), primitive.level);
    case 'text':
    case 'bubble':
    case 'dimension chain':
      return [];
  }
};
