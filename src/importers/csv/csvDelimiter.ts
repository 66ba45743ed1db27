import type { CsvDelimiter } from './readCsv.ts';

/**
 * What parts the cells of a text, by its first line that is not blank: a tab where there is one, else
 * a semicolon, else a comma. Text in quotation marks does not count.
 */
export const csvDelimiter = (text: string): CsvDelimiter => {
  const line = /^\s*(\S[^\r\n]*)/.exec(text.replace(/^\uFEFF/, ''))?.[1] ?? '';
  const bare = line.replace(/"[^"]*"/g, '');
  if (bare.includes('\t')) return '\t';
  return bare.includes(';') ? ';' : ',';
};
