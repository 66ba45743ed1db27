import { phrase } from '../../phrases/phrase.ts';
/** A picture of lines is kept without loss while it is no larger than this, bytes. */
const mostLossless = 3_000_000;
/** Of a JPEG. */
const quality = 0.85;

/** The pixels of a picture on a canvas that is not on the screen. */
export const canvasOf = (
  bitmap: ImageBitmap,
  ground: 'clear' | 'white',
): { readonly canvas: OffscreenCanvas; readonly context: OffscreenCanvasRenderingContext2D } => {
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new Error(phrase`this browser has no canvas to decode pictures on`);
  if (ground === 'white') {
    context.fillStyle = '#ffffff';
    context.fillRect(0, 0, bitmap.width, bitmap.height);
  }
  context.drawImage(bitmap, 0, 0);
  return { canvas, context };
};

/**
 * The bytes of a picture: `lines` (a scan, a page) as PNG while that is small enough, all else as JPEG,
 * with white where it was clear. Nothing that a camera wrote of it is in them.
 */
export const encoded = async (bitmap: ImageBitmap, of: 'lines' | 'photo'): Promise<Blob> => {
  const { canvas } = canvasOf(bitmap, 'white');
  if (of === 'lines') {
    const blob = await canvas.convertToBlob({ type: 'image/png' });
    if (blob.size <= mostLossless) return blob;
  }
  return canvas.convertToBlob({ type: 'image/jpeg', quality });
};
