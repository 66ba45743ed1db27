import { boxShapes } from '../../src/geometry/boxShapes.ts';
import type { OrientedBox } from '../../src/geometry/orientedBox.ts';
import { shapesOverlap } from '../../src/geometry/shapesOverlap.ts';

/** Whether two turned rectangles share area, as `shapesOverlap` says of their shapes. */
export const boxesOverlap = <Space extends string>(
  a: OrientedBox<Space>,
  b: OrientedBox<NoInfer<Space>>,
): boolean => shapesOverlap(boxShapes([a]), 0, boxShapes([b]));
