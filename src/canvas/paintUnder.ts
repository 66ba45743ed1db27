import type { Palette } from '../drawing/ink.ts';
import { overPad } from './padRoom.ts';
import { paintPictures } from './paintPictures.ts';
import { onSnapshot, type Snapshot } from './snapshot.ts';
import type { UnderPicture } from './underPicture.ts';

/** What lies under the drawing, and with what it is painted. */
export interface Under {
  readonly pictures: readonly UnderPicture[];
  readonly palette: Palette;
}

/** Paints the paper and the pictures on it into a picture of their own. */
export const paintUnder = (picture: Snapshot, { pictures, palette }: Under): void => {
  const { view, pad } = picture;
  onSnapshot(picture, (context) => {
    context.fillStyle = palette.paper;
    context.fillRect(-overPad, -overPad, pad.width + 2 * overPad, pad.height + 2 * overPad);
    paintPictures(context, pictures, { view, palette });
  });
};
