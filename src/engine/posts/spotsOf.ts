import { sameSpot } from '../../geometry/sameSpot.ts';
import { spot } from '../../geometry/tolerance.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import type { Site } from '../../site/site.ts';

/** For every mark that a fence line passes, the mark that stands for its spot: mostly itself. */
export type Spots = ReadonlyMap<MarkId, MarkId>;

/** Marks are looked for in squares so wide, inches: far wider than a spot, so that one or two hold all that are near. */
const side = 16;

/** One number for each square of the ground; columns and rows stay far below 2^22 either way. */
const squareAt = (column: number, row: number): number => column * 2 ** 23 + row;

/** The marks of fence lines, each once, in the order of their ids. */
export const fenceMarks = ({ lines }: Pick<Site, 'lines'>): readonly MarkId[] => {
  const used = new Set<MarkId>();
  for (const { path } of Object.values(lines)) {
    for (const { mark } of Object.values(path)) used.add(mark);
  }
  return [...used].toSorted();
};

/** How a place lies from another in squares one `spot` wide: 0 in the same, 1 behind it, 2 after it. */
const aside = (from: number, to: number): number => {
  const by = Math.floor(to / spot) - Math.floor(from / spot);
  return by < 0 ? 1 : by * 2;
};

/** Of marks on one spot with another the one that it goes with: by the squares round it, then by id. */
const nearestOf = (
  near: readonly MarkId[],
  mark: Mark,
  marks: Site['marks'],
): MarkId | undefined => {
  const rank = (id: MarkId): number => {
    const { x, y } = marks[id] ?? mark;
    return 3 * aside(mark.x, x) + aside(mark.y, y);
  };
  return near.length < 2 ? near[0] : near.toSorted((a, b) => rank(a) - rank(b))[0];
};

/**
 * Marks of fence lines that stand on one spot count as the first of them by id, so that two lines
 * that were drawn to one place without sharing its mark still share the post there.
 */
export const spotsOf = (site: Site, used: readonly MarkId[] = fenceMarks(site)): Spots => {
  const { marks } = site;
  const squares = new Map<number, MarkId[]>();
  const spots = new Map<MarkId, MarkId>();
  const nearTo = (mark: Mark): MarkId[] => {
    const near: MarkId[] = [];
    const [west, east] = [Math.floor((mark.x - spot) / side), Math.floor((mark.x + spot) / side)];
    const [south, north] = [Math.floor((mark.y - spot) / side), Math.floor((mark.y + spot) / side)];
    for (let column = west; column <= east; column += 1) {
      for (let row = south; row <= north; row += 1) {
        for (const other of squares.get(squareAt(column, row)) ?? []) {
          if (sameSpot(marks[other] ?? mark, mark)) near.push(other);
        }
      }
    }
    return near;
  };
  for (const id of used) {
    const mark = marks[id];
    if (mark === undefined) continue;
    const first = nearestOf(nearTo(mark), mark, marks);
    spots.set(id, first ?? id);
    if (first !== undefined) continue;
    const square = squareAt(Math.floor(mark.x / side), Math.floor(mark.y / side));
    const own = squares.get(square);
    if (own === undefined) squares.set(square, [id]);
    else own.push(id);
  }
  return spots;
};
