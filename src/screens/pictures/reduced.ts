/** A picture no larger than `longest` on its longer side, smoothly; the same where it is small enough. */
export const reduced = async (bitmap: ImageBitmap, longest: number): Promise<ImageBitmap> => {
  const times = longest / Math.max(bitmap.width, bitmap.height);
  if (times >= 1) return bitmap;
  const small = await createImageBitmap(bitmap, {
    resizeWidth: Math.max(1, Math.round(bitmap.width * times)),
    resizeHeight: Math.max(1, Math.round(bitmap.height * times)),
    resizeQuality: 'high',
  });
  bitmap.close();
  return small;
};
