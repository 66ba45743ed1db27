import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { PdfAssets } from '../../../src/exporters/pdf/pdfAssets.ts';

const require = createRequire(import.meta.url);
const font = (file: string): Uint8Array =>
  new Uint8Array(readFileSync(require.resolve(`@expo-google-fonts/barlow/${file}`)));

/** The fonts that the program gives to the PDF writer. */
export const sheetFonts: PdfAssets = {
  regular: font('400Regular/Barlow_400Regular.ttf'),
  bold: font('600SemiBold/Barlow_600SemiBold.ttf'),
};
