import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { openSite } from '../../src/site/openSite.ts';

const folder = join(import.meta.dirname, '..', '..', 'sample-sites');

/** Every sample site, laid out. */
export const sampleYards = readdirSync(folder)
  .filter((file) => file.endsWith('.site.json'))
  .map((file) => {
    const text = readFileSync(join(folder, file), 'utf8');
    const opened = openSite(text);
    if (!opened.ok) throw new Error(`${file}: ${opened.reason}`);
    const site = opened.value;
    return { name: file.replace('.site.json', ''), text, site, layout: layOutSite(site) };
  });
