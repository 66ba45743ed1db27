import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

export type FileKind = 'geojson' | 'dxf' | 'csv';

const endings: Readonly<Record<string, FileKind>> = {
  geojson: 'geojson',
  json: 'geojson',
  dxf: 'dxf',
  csv: 'csv',
  tsv: 'csv',
  txt: 'csv',
};

/** The kind of a file by its name; unread with one line for another ending. */
export const fileKind = (name: string): Parsed<FileKind> => {
  const ending = /\.([A-Za-z0-9]+)$/.exec(name)?.[1]?.toLowerCase() ?? '';
  const kind = Object.hasOwn(endings, ending) ? endings[ending] : undefined;
  if (kind !== undefined) return read(kind);
  return unread(
    phrase`expected a file that ends in .geojson, .json, .dxf, .csv, .tsv or .txt, found ${quotedText(name)}`,
  );
};

/** What a text looks like by how it begins; a list of points where it is neither of the others. */
export const looks = (text: string): FileKind => {
  const start = text
    .slice(0, 400)
    .replace(/^\uFEFF/, '')
    .trimStart();
  if (start.startsWith('{') || start.startsWith('[')) return 'geojson';
  return /^(?:999\s*\r?\n.*\r?\n\s*)*0\s*\r?\n\s*SECTION/.test(start) ? 'dxf' : 'csv';
};

const nouns: Readonly<Record<FileKind, string>> = {
  geojson: 'GeoJSON',
  dxf: 'DXF',
  csv: phrase`a list of points`,
};

/** Null where a text can be what its file's name says; else one line that says what it looks like. */
export const kindFault = (kind: FileKind, text: string): string | null => {
  const found = looks(text);
  if (found === kind || found === 'csv') return null;
  return phrase`expected ${nouns[kind]} by its name, found ${nouns[found]}`;
};
