import { PDFDict, PDFName, PDFString, type PDFDocument } from 'pdf-lib';
import type { PdfInfo } from '../pdfInfo.ts';
import { pdfText } from './pdfText.ts';
import type { Language } from '../../../phrases/languages.ts';
import { language } from '../../../phrases/speak.ts';

/** The tags of the languages that the program prints (BCP 47): as they are spoken where yards are built by feet. */
const tags: Readonly<Record<Language, string>> = { en: 'en-US', es: 'es-US' };

/** Says in a PDF what it is, in which language, and its day where it has one; no other moment is left in it. */
export const setProperties = (
  { catalog, context }: PDFDocument,
  { title, author, subject, keywords, day }: PdfInfo,
): void => {
  const told = { Title: title, Author: author, Subject: subject, Keywords: keywords.join(', ') };
  const info = context.obj({ Creator: PDFString.of('Lathline') });
  for (const [key, text] of Object.entries(told)) {
    if (text !== '') info.set(PDFName.of(key), pdfText(text));
  }
  if (day !== null) info.set(PDFName.of('CreationDate'), PDFString.of(day));
  const before = context.lookupMaybe(context.trailerInfo.Info, PDFDict);
  const producer = before?.get(PDFName.of('Producer'));
  if (producer !== undefined) info.set(PDFName.of('Producer'), producer);
  if (context.trailerInfo.Info === undefined) context.trailerInfo.Info = context.register(info);
  else context.assign(context.trailerInfo.Info as never, info);
  catalog.set(PDFName.of('Lang'), PDFString.of(tags[language()]));
  catalog.set(PDFName.of('ViewerPreferences'), context.obj({ DisplayDocTitle: true }));
};
