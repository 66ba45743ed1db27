import type { Frame } from './frame.ts';

const kindAt = (data: DataView, at: number): string =>
  String.fromCharCode(...[4, 5, 6, 7].map((n) => data.getUint8(at + n)));

/** Chunks for notes: Exif, and texts of which one may be XMP (W3C PNG, sections 11.3.3 and 11.3.4.4). */
const notes: readonly string[] = ['eXIf', 'iTXt', 'tEXt', 'zTXt'];

/** Whether any chunk is of notes: a length, a kind, so many bytes and a check each. */
const hasNotes = (data: DataView): boolean => {
  for (let at = 8; at + 8 <= data.byteLength; at += 12 + data.getUint32(at)) {
    if (notes.includes(kindAt(data, at))) return true;
  }
  return false;
};

/** The size of a PNG by its first chunk (W3C PNG, section 11.2.1); null where that is not there. */
export const pngFrame = (data: DataView): Frame | null => {
  if (data.byteLength < 24 || kindAt(data, 8) !== 'IHDR') return null;
  return { width: data.getUint32(16), height: data.getUint32(20), notes: hasNotes(data) };
};
