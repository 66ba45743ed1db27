import { separatorLine, type CsvDelimiter } from './readCsv.ts';

/**
 * What parts the cells of a text, by its first line that is not blank: a tab where there is one, else
 * a semicolon, else a comma. Text in quotation marks does not count. A first line such as `sep=;` says it.
 */
export const csvDelimiter = (text: string): CsvDelimiter => {
  const line = /^\s*(\S[^\r\n]*)/.exec(text.replace(/^\uFEFF/, ''))?.[1] ?? '';
  const said = separatorLine.exec(text)?.[1];
  if (said === ';' || said === '\t' || said === ',') return said;
  const bare = line.replace(/"[^"]*"/g, '');
  if (bare.includes('\t')) return '\t';
  return bare.includes(';') ? ';' : ',';
};
