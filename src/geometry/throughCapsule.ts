import { dot } from './dot.ts';
import { subtract } from './subtract.ts';
import { unitVector } from './unitVector.ts';
import type { Point } from './point.ts';
import type { Segment } from './segment.ts';

/** A piece of a line, told from the line's start in the unit of the space. */
export interface Piece {
  readonly from: number;
  readonly to: number;
}

interface Ray {
  readonly start: Point<string>;
  readonly way: Point<string>;
}

const throughDisc = ({ start, way }: Ray, centre: Point<string>, radius: number): Piece | null => {
  const out = subtract(centre, start);
  const nearest = dot(out, way);
  const half = radius * radius - (dot(out, out) - nearest * nearest);
  if (half < 0) return null;
  return { from: nearest - Math.sqrt(half), to: nearest + Math.sqrt(half) };
};

/** Where one coordinate, `at` where the ray starts and growing by `pace`, lies between two values. */
const between = (at: number, pace: number, low: number, high: number): Piece | null => {
  if (pace === 0) return at < low || at > high ? null : { from: -Infinity, to: Infinity };
  const [a, b] = [(low - at) / pace, (high - at) / pace];
  return { from: Math.min(a, b), to: Math.max(a, b) };
};

const throughBand = (ray: Ray, axis: Segment<string>, radius: number): Piece | null => {
  const along = unitVector(axis.start, axis.end);
  if (along === null) return null;
  const out = subtract(ray.start, axis.start);
  const across = { x: -along.y, y: along.x };
  const length = dot(subtract(axis.end, axis.start), along);
  const lengthwise = between(dot(out, along), dot(ray.way, along), 0, length);
  const crosswise = between(dot(out, across), dot(ray.way, across), -radius, radius);
  if (lengthwise === null || crosswise === null) return null;
  const from = Math.max(lengthwise.from, crosswise.from);
  const to = Math.min(lengthwise.to, crosswise.to);
  return from > to ? null : { from, to };
};

/**
 * The piece of the endless line through a segment that lies within `radius` of another segment
 * (a point where that has no length); null where it passes farther off, or where the line has no
 * direction. What lies so near is convex, so that there is one piece at most.
 */
export const throughCapsule = <Space extends string>(
  line: Segment<Space>,
  axis: Segment<NoInfer<Space>>,
  radius: number,
): Piece | null => {
  const way = unitVector(line.start, line.end);
  if (way === null) return null;
  const ray = { start: line.start, way };
  const pieces = [
    throughDisc(ray, axis.start, radius),
    throughDisc(ray, axis.end, radius),
    throughBand(ray, axis, radius),
  ].filter((piece) => piece !== null);
  if (pieces.length === 0) return null;
  return {
    from: Math.min(...pieces.map(({ from }) => from)),
    to: Math.max(...pieces.map(({ to }) => to)),
  };
};
