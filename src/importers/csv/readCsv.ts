import { startsFormula } from '../../exporters/csv/startsFormula.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A row of cells and the line of the text on which it begins, the first being 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** What parts the cells of a row. */
export type CsvDelimiter = ',' | ';' | '\t';

/** A whole cell in quotation marks, or one without; then what ends it. */
const fieldOf = (delimiter: CsvDelimiter): RegExp =>
  new RegExp(`(?:"((?:[^"]|"")*)"|([^${delimiter}\\r\\n]*))(${delimiter}|\\r\\n|\\r|\\n|$)`, 'y');

const named: Readonly<Record<CsvDelimiter, string>> = {
  ',': phrase`comma`,
  ';': phrase`semicolon`,
  '\t': phrase`tab`,
};

const kept = (text: string): string =>
  text.startsWith("'") && startsFormula.test(text.slice(1)) ? text.slice(1) : text;

const linesIn = (text: string): number => text.split(/\r\n|\r|\n/).length - 1;

const faultAt = (text: string, at: number, line: number, delimiter: CsvDelimiter): string => {
  const rest = text.slice(at);
  const closed = /^"(?:[^"]|"")*"/.exec(rest);
  if (closed === null)
    return phrase`line ${line}: a quotation mark is not closed: expected another before the end of the file, found ${quotedText(rest)}`;
  const after = rest.slice(closed[0].length).split(/[\r\n]/)[0] ?? '';
  return phrase`line ${line + linesIn(closed[0])}: expected a ${named[delimiter]} behind a closing quotation mark, found ${quotedText(after)}`;
};

const blank = ({ cells }: CsvRow): boolean => cells.length === 1 && cells[0]?.trim() === '';

/** The first line with which spreadsheets say what parts the cells; it has no cells of its own. */
export const separatorLine = /^\uFEFF?sep=([,;\t])[ \t]*(?=[\r\n]|$)/i;

/**
 * Reads comma-separated text (RFC 4180; any line ends, a byte order mark in front, and inch marks in
 * cells without quotation marks are forgiven). Blank lines and a first line such as `sep=;` are left out; the apostrophe that keeps a
 * cell from being run is taken off. Cells are parted by commas, or by what is given. Unread with one
 * line that names the line of the text.
 */
export const readCsv = (text: string, delimiter: CsvDelimiter = ','): Parsed<readonly CsvRow[]> => {
  const field = fieldOf(delimiter);
  const plain = text.replace(separatorLine, '').replace(/^\uFEFF/, '');
  const rows: CsvRow[] = [];
  let [at, line, begun] = [0, 1, 1];
  let cells: string[] = [];
  while (at < plain.length || cells.length > 0) {
    field.lastIndex = at;
    const found = field.exec(plain);
    // what begins with a quotation mark has to end with one
    if (found === null || (found[1] === undefined && found[2]?.startsWith('"') === true)) {
      return unread(faultAt(plain, at, line, delimiter));
    }
    cells.push(kept(found[1] === undefined ? (found[2] ?? '') : found[1].replaceAll('""', '"')));
    at += found[0].length;
    line += linesIn(found[0]);
    if (found[3] === delimiter) continue;
    rows.push({ line: begun, cells });
    [cells, begun] = [[], line];
  }
  return read(rows.filter((row) => !blank(row)));
};
