import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

const folder = join(import.meta.dirname, '..', '..', 'sample-sites');
const ending = '.site.json';

/** The sample sites by name, each with the text of its file. */
export const sampleSites: readonly { readonly name: string; readonly text: string }[] = readdirSync(
  folder,
)
  .filter((file) => file.endsWith(ending))
  .map((file) => ({
    name: file.slice(0, -ending.length),
    text: readFileSync(join(folder, file), 'utf8'),
  }));

/** The text of one sample site; an error that names it when there is none. */
export const sampleSite = (name: string): string => {
  const found = sampleSites.find((sample) => sample.name === name);
  if (found === undefined) throw new Error(`no sample site “${name}” in ${folder}`);
  return found.text;
};
