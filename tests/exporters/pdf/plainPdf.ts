import { PDFDocument } from 'pdf-lib';

/** A PDF with every object written out, none packed with others: what is in it can be searched as a text. */
export const plainPdf = async (bytes: Uint8Array): Promise<string> => {
  const doc = await PDFDocument.load(bytes, { updateMetadata: false });
  return Buffer.from(await doc.save({ useObjectStreams: false })).toString('latin1');
};
