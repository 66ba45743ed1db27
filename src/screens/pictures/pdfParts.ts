import dingbats from 'pdfjs-dist/standard_fonts/FoxitDingbats.pfb?url';
import fixed from 'pdfjs-dist/standard_fonts/FoxitFixed.pfb?url';
import fixedBold from 'pdfjs-dist/standard_fonts/FoxitFixedBold.pfb?url';
import fixedBoldItalic from 'pdfjs-dist/standard_fonts/FoxitFixedBoldItalic.pfb?url';
import fixedItalic from 'pdfjs-dist/standard_fonts/FoxitFixedItalic.pfb?url';
import serif from 'pdfjs-dist/standard_fonts/FoxitSerif.pfb?url';
import serifBold from 'pdfjs-dist/standard_fonts/FoxitSerifBold.pfb?url';
import serifBoldItalic from 'pdfjs-dist/standard_fonts/FoxitSerifBoldItalic.pfb?url';
import serifItalic from 'pdfjs-dist/standard_fonts/FoxitSerifItalic.pfb?url';
import symbol from 'pdfjs-dist/standard_fonts/FoxitSymbol.pfb?url';
import sansBold from 'pdfjs-dist/standard_fonts/LiberationSans-Bold.ttf?url';
import sansBoldItalic from 'pdfjs-dist/standard_fonts/LiberationSans-BoldItalic.ttf?url';
import sansItalic from 'pdfjs-dist/standard_fonts/LiberationSans-Italic.ttf?url';
import sans from 'pdfjs-dist/standard_fonts/LiberationSans-Regular.ttf?url';
import jbig2 from 'pdfjs-dist/wasm/jbig2.wasm?url';
import openjpeg from 'pdfjs-dist/wasm/openjpeg.wasm?url';
import qcms from 'pdfjs-dist/wasm/qcms_bg.wasm?url';

/**
 * What the PDF reader fetches when a page needs it, by the names that it asks for: letters of pages that
 * bring none of their own, and what unpacks scans. Letters of Chinese, Japanese and Korean pages that bring
 * none of their own are not with the program.
 */
const parts: Readonly<Record<string, string>> = {
  'FoxitDingbats.pfb': dingbats,
  'FoxitFixed.pfb': fixed,
  'FoxitFixedBold.pfb': fixedBold,
  'FoxitFixedBoldItalic.pfb': fixedBoldItalic,
  'FoxitFixedItalic.pfb': fixedItalic,
  'FoxitSerif.pfb': serif,
  'FoxitSerifBold.pfb': serifBold,
  'FoxitSerifBoldItalic.pfb': serifBoldItalic,
  'FoxitSerifItalic.pfb': serifItalic,
  'FoxitSymbol.pfb': symbol,
  'LiberationSans-Bold.ttf': sansBold,
  'LiberationSans-BoldItalic.ttf': sansBoldItalic,
  'LiberationSans-Italic.ttf': sansItalic,
  'LiberationSans-Regular.ttf': sans,
  'jbig2.wasm': jbig2,
  'openjpeg.wasm': openjpeg,
  'qcms_bg.wasm': qcms,
};

/** Hands the PDF reader the parts that it asks for, out of this program and from nowhere else. */
export class PdfParts {
  async fetch({ filename }: { readonly filename: string }): Promise<Uint8Array> {
    const address = Object.hasOwn(parts, filename) ? parts[filename] : undefined;
    if (address === undefined) throw new Error(`${filename} is not with this program`);
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(`${filename} is not on this device`);
    return new Uint8Array(await answer.arrayBuffer());
  }
}
