import { PDFArray, PDFDict, PDFName, PDFRawStream, PDFString, type PDFDocument } from 'pdf-lib';
import { checkValue } from '../../../site/checkValue.ts';

const name = PDFName.of;

/** Six capitals that stand for the letters that a font was cut down to (ISO 32000-1, 9.6.4). */
const tagOf = (file: Uint8Array): string => {
  let hash = Number.parseInt(checkValue(Array.from(file).join()), 16);
  return Array.from({ length: 6 }, () => {
    const letter = String.fromCharCode(65 + (hash % 26));
    hash = Math.floor(hash / 26);
    return letter;
  }).join('');
};

/**
 * Names each embedded font as the part of a font that it is, and its letters as counted by that font: the
 * writer cuts fonts down to what is used and says so nowhere.
 */
export const nameFonts = ({ context }: PDFDocument): void => {
  for (const [, font] of context.enumerateIndirectObjects()) {
    if (!(font instanceof PDFDict) || font.get(name('Subtype')) !== name('Type0')) continue;
    const [below] = context.lookup(font.get(name('DescendantFonts')), PDFArray).asArray();
    const letters = context.lookup(below, PDFDict);
    const descriptor = letters.lookup(name('FontDescriptor'), PDFDict);
    const file = descriptor.lookup(name('FontFile2'));
    if (!(file instanceof PDFRawStream)) continue;
    const base = font.lookup(name('BaseFont'), PDFName).decodeText();
    const tagged = name(`${tagOf(file.contents)}+${base}`);
    font.set(name('BaseFont'), tagged);
    letters.set(name('BaseFont'), tagged);
    descriptor.set(name('FontName'), tagged);
    letters.set(
      name('CIDSystemInfo'),
      context.obj({
        Registry: PDFString.of('Adobe'),
        Ordering: PDFString.of('Identity'),
        Supplement: 0,
      }),
    );
  }
};
