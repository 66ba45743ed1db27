import { PDFHexString } from 'pdf-lib';

/** Bytes of plain letters as a PDF writes them in hexadecimal digits. */
const digits = (text: string): string =>
  Array.from(text, (letter) => letter.charCodeAt(0).toString(16).padStart(2, '0')).join('');

/**
 * A text as properties, bookmarks and names of a PDF hold it: plain letters as they are, all else in UTF-16,
 * so that any letter comes back (ISO 32000-1, 7.9.2.2). Control characters and halves of letters, which no
 * reader shows, are blanks and `\ufffd`. No bracket or backslash in it can end the text.
 */
export const pdfText = (text: string): PDFHexString => {
  const shown = text.replace(/\p{Cc}/gu, ' ').replace(/\p{Cs}/gu, '\ufffd');
  return /^[ -~]*$/.test(shown) ? PDFHexString.of(digits(shown)) : PDFHexString.fromText(shown);
};
