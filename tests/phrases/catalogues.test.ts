import { describe, expect, it } from 'vitest';
import { foldersOf, holesIn, readCatalogue } from './catalogue.ts';
import { codePhrases } from './phrasesIn.ts';

const all = codePhrases();

describe.each(['es'])('the catalogue in %s', (language) => {
  const folders = foldersOf(language);

  it('[A5] has a saying for every phrase of the code, and none that the code has no longer', () => {
    for (const folder of folders) {
      const keys = new Set(all.filter((one) => one.folder === folder).map(({ key }) => key));
      expect(Object.keys(readCatalogue(language, folder)).toSorted(), folder).toEqual(
        [...keys].toSorted(),
      );
    }
  });

  it('[A5] has a file for every folder that has phrases', () => {
    expect(all.filter(({ folder }) => !folders.includes(folder))).toEqual([]);
  });

  it('[A5] leaves nothing empty, and has the holes of each phrase', () => {
    for (const folder of folders)
      for (const [key, said] of Object.entries(readCatalogue(language, folder))) {
        expect(said.trim(), key).not.toBe('');
        expect(holesIn(said), key).toEqual(holesIn(key));
      }
  });

  it('[A5] says one thing for a key, whichever folder has it', () => {
    const said = new Map<string, string>();
    for (const folder of folders)
      for (const [key, text] of Object.entries(readCatalogue(language, folder))) {
        expect(said.get(key) ?? text, key).toBe(text);
        said.set(key, text);
      }
  });
});
