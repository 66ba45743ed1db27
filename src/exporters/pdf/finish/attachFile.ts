import { PDFDict, PDFName, PDFString, type PDFDocument } from 'pdf-lib';
import type { SiteFile } from '../../../site/siteFile.ts';
import { pdfText } from './pdfText.ts';
import { phrase } from '../../../phrases/phrase.ts';

const name = PDFName.of;

/** A name that leads into no folder (ISO 32000-1, 7.11.2: strokes part folders). */
const folderless = (text: string): string => text.replace(/[\\/]/g, '_');

/** A name in plain letters for readers that know no others. */
const plain = (text: string): string => text.replace(/[^A-Za-z0-9._-]/g, '_');

/** Attaches the site file that pages were made from to their PDF, as what they come from. */
export const attachFile = (
  { catalog, context }: PDFDocument,
  file: SiteFile,
  day: string | null,
): void => {
  const bytes = new TextEncoder().encode(file.text);
  const shown = pdfText(folderless(file.name));
  const dated = day === null ? {} : { ModDate: PDFString.of(day) };
  const held = context.flateStream(bytes, {
    Type: 'EmbeddedFile',
    Subtype: 'application/json',
    Params: { Size: bytes.length, ...dated },
  });
  const ref = context.register(held);
  const spec = context.register(
    context.obj({
      Type: 'Filespec',
      F: PDFString.of(plain(file.name)),
      UF: shown,
      EF: { F: ref, UF: ref },
      Desc: pdfText(phrase`The drawing that this sheet was made from`),
      AFRelationship: 'Source',
    }),
  );
  const names = catalog.lookupMaybe(name('Names'), PDFDict) ?? context.obj({});
  names.set(name('EmbeddedFiles'), context.obj({ Names: [shown, spec] }));
  catalog.set(name('Names'), names);
  catalog.set(name('AF'), context.obj([spec]));
};
