import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What one language says for the phrases of one folder, by their keys. */
export type FolderCatalogue = Readonly<Record<string, string>>;

const home = join(import.meta.dirname, '../../src/phrases');
const fileOf = (language: string, folder: string): string => join(home, language, `${folder}.json`);

/** The folders for which a language has a catalogue. */
export const foldersOf = (language: string): string[] =>
  readdirSync(join(home, language)).map((name) => name.replace(/\.json$/, ''));

/** Reads what a language has for a folder. */
export const readCatalogue = (language: string, folder: string): FolderCatalogue =>
  JSON.parse(readFileSync(fileOf(language, folder), 'utf8')) as FolderCatalogue;

/** Writes what a language has for a folder, its keys in plain string order. */
export const writeCatalogue = (
  language: string,
  folder: string,
  catalogue: FolderCatalogue,
): void => {
  const entries = Object.entries(catalogue).toSorted(([a], [b]) => (a < b ? -1 : 1));
  const text = `${JSON.stringify(Object.fromEntries(entries), null, 2)}\n`;
  writeFileSync(fileOf(language, folder), text);
};

/** The numbers of the holes of a key or a saying, in order. */
export const holesIn = (text: string): string[] =>
  [...text.matchAll(/\{(\d+)\}/g)].map(([, n]) => n ?? '').toSorted();
