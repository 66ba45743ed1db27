import { cross } from '../../geometry/cross.ts';
import { dot } from '../../geometry/dot.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { principalAngle } from '../../geometry/principalAngle.ts';
import { subtract } from '../../geometry/subtract.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Observation } from '../../site/observation.ts';

/** How a figure changes with the place of a mark: its partial derivatives by x and y. */
export interface Part {
  readonly mark: MarkId;
  readonly x: number;
  readonly y: number;
}

/** What the marks have less what was read (inches or radians), and how that changes with them. */
export interface Misfit {
  readonly off: number;
  readonly parts: readonly Part[];
}

type At = (id: MarkId) => SitePoint;

const east: SitePoint = { x: 1, y: 0 };

interface Way {
  readonly way: SitePoint;
  readonly length: number;
  readonly unit: SitePoint;
}

/** Length and unit vector of the way between two marks; east for marks on one spot, to drive them apart. */
const wayOf = (from: SitePoint, to: SitePoint): Way => {
  const way = subtract(to, from);
  const length = Math.sqrt(way.x * way.x + way.y * way.y);
  const unit = length > 0 ? { x: way.x / length, y: way.y / length } : east;
  return { way, length, unit };
};

const part = (mark: MarkId, { x, y }: SitePoint, by = 1): Part => ({ mark, x: x * by, y: y * by });

/** Whether a way has a direction that a reading could be of: marks on one spot have none. */
const points = ({ length }: Way): boolean => length > slack;

/** How the direction of a way turns as its far end moves: a quarter left, over its length. */
const turning = ({ unit, length }: Way): SitePoint => ({
  x: -unit.y / length,
  y: unit.x / length,
});

/** What a reading of a direction says of marks that stand on one spot: nothing, whichever way they move. */
const untold = (...marks: readonly MarkId[]): Misfit => ({
  off: 0,
  parts: marks.map((mark) => ({ mark, x: 0, y: 0 })),
});

const offLine = (at: At, mark: MarkId, from: MarkId, to: MarkId): Misfit => {
  const line = wayOf(at(from), at(to));
  if (!points(line)) return untold(mark, from, to);
  const { length, unit } = line;
  const arm = subtract(at(mark), at(from));
  const left = { x: -unit.y, y: unit.x };
  const share = dot(arm, unit) / length;
  const parts = [part(mark, left), part(from, left, share - 1), part(to, left, -share)];
  return { off: dot(arm, left), parts };
};

const square = (at: At, corner: MarkId, from: MarkId, to: MarkId): Misfit => {
  const [a, b] = [wayOf(at(corner), at(from)), wayOf(at(corner), at(to))];
  if (!points(a) || !points(b)) return untold(corner, from, to);
  const angle = Math.atan2(cross(a.way, b.way), dot(a.way, b.way));
  const side = angle < 0 ? -1 : 1;
  const [turnA, turnB] = [turning(a), turning(b)];
  return {
    off: side * angle - Math.PI / 2,
    parts: [
      part(from, turnA, -side),
      part(to, turnB, side),
      part(corner, { x: turnA.x - turnB.x, y: turnA.y - turnB.y }, side),
    ],
  };
};

/**
 * What an observation is off by where its marks stand, with its partial derivatives: one misfit, of a
 * fix two, east and north. Never throws: a tape between marks on one spot runs east, and a direction or a
 * line between such says nothing.
 */
export const misfits = (seen: Observation, at: At): readonly Misfit[] => {
  switch (seen.kind) {
    case 'tape': {
      const { length, unit } = wayOf(at(seen.from), at(seen.to));
      return [
        { off: length - seen.length, parts: [part(seen.from, unit, -1), part(seen.to, unit)] },
      ];
    }
    case 'bearing': {
      const found = wayOf(at(seen.from), at(seen.to));
      if (!points(found)) return [untold(seen.from, seen.to)];
      const turn = turning(found);
      const off = principalAngle(Math.atan2(found.way.y, found.way.x) - seen.bearing);
      return [{ off, parts: [part(seen.from, turn, -1), part(seen.to, turn)] }];
    }
    case 'square':
      return [square(at, seen.at, seen.from, seen.to)];
    case 'straight':
      return [offLine(at, seen.at, seen.from, seen.to)];
    case 'offset': {
      const found = offLine(at, seen.at, seen.from, seen.to);
      return [{ ...found, off: found.off - seen.distance }];
    }
    case 'parallel': {
      const one = offLine(at, seen.at, seen.from, seen.to);
      const two = offLine(at, seen.other, seen.from, seen.to);
      const less = two.parts.map(({ mark, x, y }) => ({ mark, x: -x, y: -y }));
      return [{ off: one.off - two.off, parts: [...one.parts, ...less] }];
    }
    case 'fix': {
      const { x, y } = at(seen.mark);
      return [
        { off: x - seen.x, parts: [{ mark: seen.mark, x: 1, y: 0 }] },
        { off: y - seen.y, parts: [{ mark: seen.mark, x: 0, y: 1 }] },
      ];
    }
  }
};
