import { reverseLine } from '../edits/reverseLine.ts';
import type { LineId, VertexId } from '../ids.ts';
import type { Path } from '../path.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { same } from './same.ts';

/** What is merged: two documents, and the one that both came from; null where nobody knows it. */
export interface Copies {
  readonly base: Site | null;
  readonly first: Site;
  readonly second: Site;
}

const common = (path: Path, other: Path): VertexId[] =>
  verticesOf(path)
    .map(({ id }) => id)
    .filter((id) => Object.hasOwn(other, id));

/** Whether what both paths pass is passed the other way round. */
const turned = (path: Path, other: Path): boolean => {
  const [one, two] = [common(path, other), common(other, path)];
  return one.length > 1 && !same(one, two) && same(one, two.toReversed());
};

const pathIn = (site: Site, id: LineId): Path | null =>
  Object.hasOwn(site.lines, id) ? (site.lines[id]?.path ?? null) : null;

const lineSameWay = (copies: Copies, id: LineId): Copies => {
  const { base, first, second } = copies;
  const [one, two] = [pathIn(first, id), pathIn(second, id)];
  if (one === null || two === null) return copies;
  if (base === null) {
    return turned(one, two) ? { ...copies, second: reverseLine(second, id) } : copies;
  }
  const was = pathIn(base, id);
  if (was === null) return copies;
  const [firstTurned, secondTurned] = [turned(one, was), turned(two, was)];
  if (!firstTurned && !secondTurned) return copies;
  return {
    base: reverseLine(base, id),
    first: firstTurned ? first : reverseLine(first, id),
    second: secondTurned ? second : reverseLine(second, id),
  };
};

/**
 * The copies with every line that one of them let run the other way turned round in all of them, so that legs,
 * gates and pins of one are those of the others. Nothing moves on the ground.
 */
export const sameWay = (copies: Copies): Copies =>
  (Object.keys(copies.first.lines) as LineId[]).reduce(lineSameWay, copies);
