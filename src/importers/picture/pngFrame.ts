import type { Frame } from './frame.ts';

const chunk = (data: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((n) => data.getUint8(at + n)));

/** The size of a PNG by its first chunk (W3C PNG, section 11.2.2); null where that is not there. */
export const pngFrame = (data: DataView): Frame | null => {
  if (data.byteLength < 24 || chunk(data, 12) !== 'IHDR') return null;
  return { width: data.getUint32(16), height: data.getUint32(20), exif: false };
};
