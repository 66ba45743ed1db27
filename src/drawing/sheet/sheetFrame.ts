import type { Paper } from './papers.ts';
import { inset, type Rect } from './rect.ts';

/** Clear of the paper's edge, height of the title block, clear inside the frame; paper inches. */
const margin = 0.4;
const titleHeight = 1.0;
const inside = 0.16;

/** Where things go on a sheet: the frame, the drawing or tables in it, and the title block. */
export interface SheetFrame {
  readonly outer: Rect;
  readonly content: Rect;
  readonly title: Rect;
}

/** The frame of a paper: 0.4 in (10 mm) from its edge, with the title block along the bottom. */
export const sheetFrame = ({ width, height }: Paper): SheetFrame => {
  const outer = inset({ x: 0, y: 0, width, height }, margin);
  const title = {
    x: outer.x,
    y: outer.y + outer.height - titleHeight,
    width: outer.width,
    height: titleHeight,
  };
  const content = inset({ ...outer, height: outer.height - titleHeight }, inside);
  return { outer, content, title };
};
