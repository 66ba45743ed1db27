import { composed } from '../../geometry/composed.ts';
import type { LaidPicture } from '../../geometry/shownGround.ts';
import { straightPlan } from '../../geometry/straightPlan.ts';
import { pictureHeader } from '../../importers/picture/pictureHeader.ts';
import { phrase } from '../../phrases/phrase.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { canvasOf } from './encoded.ts';
import type { Bitmap } from './pictureCall.ts';
import { reduced } from './reduced.ts';
import { straightened } from './straightened.ts';
import { damaged, decoded } from './takenFrom.ts';

/** A picture that came in a site file is looked at as closely as one that is brought. */
const checkedPixels = async (picture: Blob): Promise<Parsed<ImageBitmap>> => {
  const head = pictureHeader(new Uint8Array(await picture.arrayBuffer()));
  if (!head.ok) return head;
  const bitmap = await decoded(picture);
  return bitmap === null ? unread(damaged) : read(bitmap);
};

/** The pixels of a picture, at most `longest` on its longer side. */
export const shownBitmap = async (picture: Blob, longest: number): Promise<Parsed<Bitmap>> => {
  const whole = await checkedPixels(picture);
  if (!whole.ok) return whole;
  return read({ bitmap: await reduced(whole.value, longest), plan: null });
};

/** The pixels of a picture that was taken at an angle, as they lie square on the ground. */
export const straightBitmap = async (
  picture: Blob,
  laid: LaidPicture,
  longest: number,
): Promise<Parsed<Bitmap>> => {
  const plan = straightPlan(laid, longest);
  if (plan === null) return unread(phrase`the picture shows no ground where it lies`);
  const whole = await checkedPixels(picture);
  if (!whole.ok) return whole;
  const { width, height } = whole.value;
  const pixels = canvasOf(whole.value, 'clear').context.getImageData(0, 0, width, height);
  whole.value.close();
  // ties are told in pixels of the picture as it came, which may be larger than what is kept of it
  const smaller = [width / laid.width, 0, 0, 0, height / laid.height, 0, 0, 0, 1] as const;
  const flat = straightened(pixels, composed(smaller, plan.toPicture), plan);
  const bitmap = await createImageBitmap(new ImageData(flat.data, flat.width, flat.height));
  return read({ bitmap, plan });
};
