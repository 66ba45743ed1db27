import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { PngParts } from '../../../src/exporters/png/pngParts.ts';
import { sheetFonts } from '../pdf/sheetFonts.ts';

const require = createRequire(import.meta.url);

/** What the program makes a PNG with. */
export const pngParts: PngParts = {
  ...sheetFonts,
  raster: new Uint8Array(readFileSync(require.resolve('@resvg/resvg-wasm/index_bg.wasm'))),
};
