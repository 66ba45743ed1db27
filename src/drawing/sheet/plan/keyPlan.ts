import type { Layout } from '../../../engine/layout.ts';
import { boundsOf, type Bounds } from '../../../geometry/bounds.ts';
import { distance } from '../../../geometry/distance.ts';
import { trackPoints } from '../../../geometry/track.ts';
import type { PaperPoint, SitePoint } from '../../../geometry/point.ts';
import type { Atom, Text } from '../../atom.ts';
import { breaksFor, brokenAt } from '../../explode/brokenAt.ts';
import { polylineOutline, rectangleOutline } from '../../explode/polylineOutline.ts';
import { sharesInBox } from '../../explode/sharesInBox.ts';
import { textBox } from '../../lettering/textBox.ts';
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

/** A number stands so far from the outline of its part and from fence, paper inches. */
const clear = 0.03;
/** Places for a number in each direction of a part. */
const steps = 9;

type Track = readonly PaperPoint[];

const isThrough = (text: Text, track: Track): boolean => {
  const own = textBox(text);
  const box = {
    ...own,
    halfWidth: own.halfWidth + clear,
    halfHeight: own.halfHeight + clear,
  };
  return track.some((to, n) => {
    const from = track[n - 1];
    return from !== undefined && sharesInBox(from, to, box) !== null;
  });
};

/** Places in a part where the box of a text is inside of it, the nearest to its middle first. */
const placesIn = (rect: Rect, text: Text): PaperPoint[] => {
  const { halfWidth, halfHeight } = textBox(text);
  const middle = { x: rect.x + rect.width / 2, y: rect.y + rect.height / 2 };
  const wide = Math.max(0, rect.width / 2 - halfWidth - clear);
  const high = Math.max(0, rect.height / 2 - halfHeight - clear);
  const shares = Array.from({ length: steps }, (_, n) => (2 * n) / (steps - 1) - 1);
  return shares
    .flatMap((x) => shares.map((y) => ({ x: middle.x + x * wide, y: middle.y + y * high })))
    .toSorted((a, b) => distance(a, middle) - distance(b, middle));
};

/** The number of a part where no fence passes through it; in its middle where there is no such place. */
const numberIn = (rect: Rect, number: string, bold: boolean, tracks: readonly Track[]): Text[] => {
  if (Math.min(rect.width, rect.height) < leastPart) return [];
  const look = {
    size: letters.small,
    weight: bold ? 'bold' : 'regular',
    align: 'middle',
  } as const;
  const middle = { x: rect.x + rect.width / 2, y: rect.y + rect.height / 2 };
  return lineOfText(number, middle.x, middle.y, look).map((text) => {
    const at = placesIn(rect, text).find(
      (place) => !tracks.some((track) => isThrough({ ...text, at: place }, track)),
    );
    return { ...text, at: at ?? middle };
  });
};

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
  const tracks = Object.values(layout.lines).flatMap(({ runs }) =>
    runs.map((run): Track => trackPoints(run, 0.01 / scale).map(onPaper)),
  );
  const fences = tracks.map((track): Atom => ({
    do: 'stroke',
    pen: { ...pens.fence, width: 0.01 },
    outline: polylineOutline(track, false),
  }));
  const numbers = rects.flatMap((rect, n) =>
    numberIn(rect, String(sheets[n] ?? ''), n === here, tracks),
  );
  const parts = rects.flatMap((rect, n): Atom[] => {
    const outline = rectangleOutline(rect, rect.width, rect.height);
    const isHere = n === here;
    return [
      ...(isHere ? [{ do: 'fill', ink: 'faint', opacity: 0.3, outline } as const] : []),
      { do: 'stroke', pen: isHere ? pens.frame : pens.thin, outline },
    ];
  });
  const gaps = breaksFor(numbers.map(textBox));
  return {
    atoms: [...brokenAt([...fences, ...parts], gaps), ...numbers],
    links: rects.map((rect, n) => ({ rect, page: sheets[n] ?? 1 })),
  };
};
