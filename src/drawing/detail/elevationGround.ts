import { moved } from '../../geometry/moved.ts';
import { polylineOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Outline } from '../outline.ts';
import type { Stroke } from '../atom.ts';
import { detailPens } from './detailPens.ts';
import { inked } from './drawn.ts';
import type { GateSight } from './gateSight.ts';
import type { OnPaper } from './onPaper.ts';

/** The places of the site under the line of a gate, that far along it from the face of its first post. */
const under = ({ laid, pair: [start] }: GateSight, x: number) =>
  moved(start.post.at, laid.bearing, start.post.od / 2 + x);

/** How far in from each end of the ground its earth is marked, and how far down; paper inches. */
const marked = 0.18;
const down = 0.06;

/** Short strokes under both ends of level ground, outside of all holes. */
const earth = ([from, to]: readonly [PaperPoint, PaperPoint]): Outline =>
  segmentsOutline(
    [0, 1, 2].flatMap((n) =>
      [from.x + (n * marked) / 3, to.x - marked + ((n + 1) * marked) / 3].map(
        (x) =>
          [
            { x: x + down / 2, y: from.y },
            { x: x - down / 2, y: from.y + down },
          ] as const,
      ),
    ),
  );

/**
 * The ground under a gate from one place along it to another, inches: as its shots describe it, and where they
 * do not, or where there are none, broken and level.
 */
export const elevationGround = (
  sight: GateSight,
  [from, to]: readonly [number, number],
  on: OnPaper,
): Stroke[] => {
  const { ground } = sight;
  const line = [on({ x: from, y: 0 }), on({ x: to, y: 0 })] as const;
  if (ground.known === 'level') {
    return [
      inked(detailPens.ground, segmentsOutline([line])),
      inked(detailPens.earth, earth(line)),
    ];
  }
  const parts = ground.between(under(sight, from), under(sight, to));
  const known = parts.map((part) =>
    inked(
      detailPens.ground,
      polylineOutline(
        part.map(({ x, z }) => on({ x, y: z })),
        false,
      ),
    ),
  );
  const [first, last] = [parts.at(0)?.at(0), parts.at(-1)?.at(-1)];
  const open = [
    first === undefined ? null : ([from, first.x, first.z] as const),
    last === undefined ? null : ([last.x, to, last.z] as const),
  ].flatMap((gap) =>
    gap === null || gap[1] - gap[0] < 1
      ? []
      : [[on({ x: gap[0], y: gap[2] }), on({ x: gap[1], y: gap[2] })] as const],
  );
  return open.length === 0 ? known : [...known, inked(detailPens.unknown, segmentsOutline(open))];
};
