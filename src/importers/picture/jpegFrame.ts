import type { Frame } from './frame.ts';

/** Markers that begin a frame: SOF0 to SOF15 without DHT, JPG and DAC (ITU-T T.81, table B.1). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Markers that stand alone, without a length behind them: TEM, RST0 to RST7, SOI. */
const isAlone = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);

/** Segments for notes: APP1 for Exif and XMP (CIPA DC-008; ISO 16684-1), APP13 for IPTC. */
const isNote = (marker: number): boolean => marker === 0xe1 || marker === 0xed;

const [endOfImage, startOfScan] = [0xd9, 0xda];

/** The size of a JPEG by its frame header; null where it ends, or its scan begins, before there is one. */
export const jpegFrame = (data: DataView): Frame | null => {
  let notes = false;
  let at = 2;
  while (at + 4 <= data.byteLength) {
    if (data.getUint8(at) !== 0xff) return null;
    const marker = data.getUint8(at + 1);
    // a marker may be filled up with any number of 0xff before it
    if (marker === 0xff) at += 1;
    else if (isAlone(marker)) at += 2;
    else if (marker === endOfImage || marker === startOfScan) return null;
    else if (isFrame(marker)) {
      if (at + 9 > data.byteLength) return null;
      return { width: data.getUint16(at + 7), height: data.getUint16(at + 5), notes };
    } else {
      notes ||= isNote(marker);
      at += 2 + data.getUint16(at + 2);
    }
  }
  return null;
};
