import type { Frame } from './frame.ts';

const fourLetters = (data: DataView): string =>
  String.fromCharCode(...[12, 13, 14, 15].map((at) => data.getUint8(at)));

const threeBytes = (data: DataView, at: number): number =>
  data.getUint16(at, true) + data.getUint8(at + 2) * 0x10000;

/** With loss: the frame tag, a start code, then 14 bits each way (RFC 6386, section 9.1). */
const lossy = (data: DataView): Frame | null => {
  if (threeBytes(data, 23) !== 0x2a019d) return null;
  const side = (at: number) => data.getUint16(at, true) & 0x3fff;
  return { width: side(26), height: side(28), notes: false };
};

/** Without loss: a sign, then one less than each side in 14 bits (RFC 9649, section 3.4). */
const lossless = (data: DataView): Frame | null => {
  if (data.getUint8(20) !== 0x2f) return null;
  const bits = data.getUint32(21, true);
  return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1, notes: false };
};

/** With more than a picture: flags, then one less than each side in 24 bits (RFC 9649, section 2.7). */
const extended = (data: DataView): Frame => ({
  width: threeBytes(data, 24) + 1,
  height: threeBytes(data, 27) + 1,
  // Exif or XMP
  notes: (data.getUint8(20) & 0x0c) !== 0,
});

/** The size of a WebP by its first chunk; null where that is none of the three there are. */
export const webpFrame = (data: DataView): Frame | null => {
  if (data.byteLength < 30) return null;
  switch (fourLetters(data)) {
    case 'VP8 ':
      return lossy(data);
    case 'VP8L':
      return lossless(data);
    case 'VP8X':
      return extended(data);
    default:
      return null;
  }
};
