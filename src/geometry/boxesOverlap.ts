import { boxShapes } from './boxShapes.ts';
import type { OrientedBox } from './orientedBox.ts';
import { shapesOverlap } from './shapesOverlap.ts';

/** Whether two turned rectangles share area, as `shapesOverlap` says of their shapes. */
export const boxesOverlap = <Space extends string>(
  a: OrientedBox<Space>,
  b: OrientedBox<NoInfer<Space>>,
): boolean => shapesOverlap(boxShapes([a]), 0, boxShapes([b]));
