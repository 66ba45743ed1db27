import { crc32 } from './crc32.ts';

/** The signature of a PNG, 8 bytes, and its first chunk: length, name, 13 bytes, check sum. */
const head = 8 + 4 + 4 + 13 + 4;
const inchesInMetre = 1 / 0.0254;

/** The chunk that says how large a pixel is: pixels a metre each way, and that it is metres. */
const physical = (dpi: number): Uint8Array => {
  const chunk = new Uint8Array(4 + 4 + 9 + 4);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set(
    [...'pHYs'].map((letter) => letter.charCodeAt(0)),
    4,
  );
  view.setUint32(8, Math.round(dpi * inchesInMetre));
  view.setUint32(12, Math.round(dpi * inchesInMetre));
  chunk[16] = 1;
  view.setUint32(17, crc32(chunk.subarray(4, 17)));
  return chunk;
};

/** A PNG without a pHYs chunk, with one, so that it prints as large as it was drawn. Dots per inch. */
export const atTrueSize = (png: Uint8Array, dpi: number): Uint8Array => {
  const chunk = physical(dpi);
  const out = new Uint8Array(png.length + chunk.length);
  out.set(png.subarray(0, head));
  out.set(chunk, head);
  out.set(png.subarray(head), head + chunk.length);
  return out;
};
