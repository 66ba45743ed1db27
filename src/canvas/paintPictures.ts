import type { Palette } from '../drawing/ink.ts';
import { toScreen } from '../editor/view.ts';
import { boundsOf } from '../geometry/bounds.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { View } from '../store/view.ts';
import { lettering } from './paintAtoms.ts';
import type { UnderPicture } from './underPicture.ts';

/** What pictures are painted with. */
export interface PicturePaint {
  readonly view: View;
  readonly palette: Palette;
}

type Pixels = Extract<UnderPicture, { readonly kind: 'pixels' }>;
type Frame = Extract<UnderPicture, { readonly kind: 'frame' }>;

const trace = (
  context: CanvasRenderingContext2D,
  points: readonly SitePoint[],
  view: View,
): void => {
  context.beginPath();
  for (const point of points) {
    const { x, y } = toScreen(view, point);
    context.lineTo(x, y);
  }
  context.closePath();
};

const paintPixels = (
  context: CanvasRenderingContext2D,
  { bitmap, toGround, within, shows }: Pixels,
  view: View,
): void => {
  if (within !== null) {
    trace(context, within, view);
    context.clip();
  }
  const [a, b, c, d, e, f] = toGround;
  const { scale, x, y } = view;
  context.globalAlpha = shows;
  context.imageSmoothingQuality = 'medium';
  // inches go up the ground and down the screen
  context.transform(a * scale, -d * scale, b * scale, -e * scale, x + c * scale, y - f * scale);
  context.drawImage(bitmap, 0, 0);
};

/** Of the words in a frame, CSS pixels. */
const [letter, line] = [15, 20];

const paintFrame = (
  context: CanvasRenderingContext2D,
  { outline, words }: Frame,
  { view, palette }: PicturePaint,
): void => {
  const bounds = boundsOf(outline.map((point) => toScreen(view, point)));
  if (bounds === null) return;
  trace(context, outline, view);
  context.setLineDash([8, 5]);
  context.lineWidth = 1.5;
  context.strokeStyle = palette.line;
  context.stroke();
  context.font = `600 ${letter}px ${lettering}`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillStyle = palette.text;
  const [x, y] = [(bounds.minX + bounds.maxX) / 2, (bounds.minY + bounds.maxY) / 2];
  words.forEach((text, n) => {
    const widest = Math.max(0, bounds.maxX - bounds.minX - 16);
    context.fillText(text, x, y + (n - (words.length - 1) / 2) * line, widest);
  });
};

/** Paints pictures in their order, the first undermost, CSS pixels; of one not at hand its frame. */
export const paintPictures = (
  context: CanvasRenderingContext2D,
  pictures: readonly UnderPicture[],
  paint: PicturePaint,
): void => {
  for (const picture of pictures) {
    context.save();
    if (picture.kind === 'frame') paintFrame(context, picture, paint);
    else if (picture.shows > 0) paintPixels(context, picture, paint.view);
    context.restore();
  }
};
