import { foldersOf, readCatalogue, writeCatalogue } from './catalogue.ts';
import { codePhrases } from './phrasesIn.ts';

/*
 * Brings the catalogue of every language up to the phrases of the code: what is new is there with an
 * empty saying, to be filled in; what the code no longer has is gone. Prints what is to be filled in.
 */
const all = codePhrases();
for (const language of ['es'])
  for (const folder of foldersOf(language)) {
    const before = readCatalogue(language, folder);
    const keys = [...new Set(all.filter((one) => one.folder === folder).map(({ key }) => key))];
    const next = Object.fromEntries(keys.map((key) => [key, before[key] ?? '']));
    writeCatalogue(language, folder, next);
    const empty = Object.values(next).filter((said) => said === '').length;
    console.log(`${language} ${folder}: ${keys.length} phrases, ${empty} to be said`);
  }
