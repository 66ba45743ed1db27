import type { Layout } from '../../../engine/layout.ts';
import { boundsOf, type Bounds } from '../../../geometry/bounds.ts';
import { trackPoints } from '../../../geometry/track.ts';
import type { PaperPoint, SitePoint } from '../../../geometry/point.ts';
import type { Atom } from '../../atom.ts';
import { polylineOutline, rectangleOutline } from '../../explode/polylineOutline.ts';
import { pens } from '../../pens.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Link } from '../page.ts';
import type { Rect } from '../rect.ts';
import type { PlanTile } from './planTiles.ts';

/** A small plan of all parts, with the way to their sheets. */
export interface KeyPlan {
  readonly atoms: readonly Atom[];
  readonly links: readonly Link[];
}

/** A number had better have so much room, paper inches; in a smaller part it is left out. */
const leastPart = 0.2;

const wholeOf = (tiles: readonly PlanTile[]): Bounds | null =>
  boundsOf(
    tiles.flatMap(({ bounds: { minX, minY, maxX, maxY } }) => [
      { x: minX, y: minY },
      { x: maxX, y: maxY },
    ]),
  );

/**
 * The fence lines alone with the parts that have sheets, in the middle of a room of the paper: each with
 * the number of its sheet, the part `here` filled and framed heavily, so that grey shows it too.
 */
export const keyPlan = (
  layout: Layout,
  tiles: readonly PlanTile[],
  { sheets, here }: { readonly sheets: readonly number[]; readonly here: number | null },
  room: Rect,
): KeyPlan => {
  const whole = wholeOf(tiles);
  if (whole === null) return { atoms: [], links: [] };
  const [wide, high] = [whole.maxX - whole.minX || 1, whole.maxY - whole.minY || 1];
  const scale = Math.min(room.width / wide, room.height / high);
  const origin = {
    x: room.x + (room.width - wide * scale) / 2,
    y: room.y + (room.height - high * scale) / 2,
  };
  const onPaper = ({ x, y }: SitePoint): PaperPoint => ({
    x: origin.x + (x - whole.minX) * scale,
    y: origin.y + (whole.maxY - y) * scale,
  });
  const rects = tiles.map(({ bounds }): Rect => {
    const corner = onPaper({ x: bounds.minX, y: bounds.maxY });
    const [width, height] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
    return { ...corner, width: width * scale, height: height * scale };
  });
  const fences = Object.values(layout.lines).flatMap(({ runs }) =>
    runs.map((run): Atom => ({
      do: 'stroke',
      pen: { ...pens.fence, width: 0.01 },
      outline: polylineOutline(trackPoints(run, 0.01 / scale).map(onPaper), false),
    })),
  );
  const parts = rects.flatMap((rect, n): Atom[] => {
    const outline = rectangleOutline(rect, rect.width, rect.height);
    const isHere = n === here;
    const number = String(sheets[n] ?? '');
    const middle = { x: rect.x + rect.width / 2, y: rect.y + rect.height / 2 };
    return [
      ...(isHere ? [{ do: 'fill', ink: 'faint', opacity: 0.3, outline } as const] : []),
      { do: 'stroke', pen: isHere ? pens.frame : pens.thin, outline },
      ...(Math.min(rect.width, rect.height) < leastPart
        ? []
        : lineOfText(number, middle.x, middle.y, {
            size: letters.small,
            weight: isHere ? 'bold' : 'regular',
            align: 'middle',
          }).map((text) => ({ ...text, halo: 'paper' as const }))),
    ];
  });
  return {
    atoms: [...fences, ...parts],
    links: rects.map((rect, n) => ({ rect, page: sheets[n] ?? 1 })),
  };
};
