import { dot } from './dot.ts';
import { corners } from './orientedBox.ts';
import { slack } from './tolerance.ts';
import type { OrientedBox } from './orientedBox.ts';
import type { Point } from './point.ts';

/** Whether a straight cut square to `axis` (a unit vector) has one set of points on each side. */
const separates = (
  axis: Point<string>,
  a: readonly Point<string>[],
  b: readonly Point<string>[],
): boolean => {
  const onA = a.map((point) => dot(point, axis));
  const onB = b.map((point) => dot(point, axis));
  return (
    Math.max(...onA) <= Math.min(...onB) + slack || Math.max(...onB) <= Math.min(...onA) + slack
  );
};

/**
 * Whether two turned rectangles share area; touching is not sharing. Two rectangles are apart
 * exactly when a cut along a side of one of them parts them (separating axis).
 */
export const boxesOverlap = <Space extends string>(
  a: OrientedBox<Space>,
  b: OrientedBox<NoInfer<Space>>,
): boolean => {
  const [onA, onB] = [corners(a), corners(b)];
  const axes = [a.angle, b.angle].flatMap((angle) => [
    { x: Math.cos(angle), y: Math.sin(angle) },
    { x: -Math.sin(angle), y: Math.cos(angle) },
  ]);
  return !axes.some((axis) => separates(axis, onA, onB));
};
