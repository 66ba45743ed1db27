import { sameSpot } from '../../geometry/sameSpot.ts';
import { spot } from '../../geometry/tolerance.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import type { Site } from '../../site/site.ts';

/** For every mark that a fence line passes, the mark that stands for its spot: mostly itself. */
export type Spots = ReadonlyMap<MarkId, MarkId>;

/** The squares, one `spot` wide, that may hold a mark nearer than that: its own and those round it. */
export const squaresRound = ({ x, y }: Mark): string[] => {
  const [column, row] = [Math.floor(x / spot), Math.floor(y / spot)];
  return [0, -1, 1].flatMap((across) => [0, -1, 1].map((up) => `${column + across} ${row + up}`));
};

/**
 * Marks of fence lines that stand on one spot count as the first of them by id, so that two lines
 * that were drawn to one place without sharing its mark still share the post there.
 */
export const spotsOf = (
  site: Site,
  squaresOf: (id: MarkId, mark: Mark) => readonly string[] = (_, mark) => squaresRound(mark),
): Spots => {
  const used = new Set(
    Object.values(site.lines).flatMap(({ path }) => Object.values(path).map(({ mark }) => mark)),
  );
  const squares = new Map<string, MarkId[]>();
  const spots = new Map<MarkId, MarkId>();
  for (const id of [...used].toSorted()) {
    const mark = site.marks[id];
    if (mark === undefined) continue;
    const round = squaresOf(id, mark);
    const first = round
      .flatMap((square) => squares.get(square) ?? [])
      .find((other) => sameSpot(site.marks[other] ?? mark, mark));
    spots.set(id, first ?? id);
    const own = round[0] ?? '';
    if (first === undefined) squares.set(own, [...(squares.get(own) ?? []), id]);
  }
  return spots;
};
