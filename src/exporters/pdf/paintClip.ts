import type { Outline } from '../../drawing/outline.ts';
import type { PageInk } from './pageInk.ts';
import { tracePath } from './tracePath.ts';

/** Paints on a page with only what lies within an outline showing, by the even-odd rule. */
export const paintClip = (ink: PageInk, outline: Outline, paint: () => void): void => {
  ink.state.within(() => {
    tracePath(ink, outline);
    ink.out.text('W*\nn\n');
    paint();
  });
};
