import { acceptedAs } from '../../engine/acceptedAs.ts';
import type { Flag } from '../../engine/flag.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { read } from '../../units/parsed.ts';
import { flagLines } from '../flagLines.ts';
import { readSite } from '../readSite.ts';
import type { Verb } from '../verb.ts';

/** `flags`: what stands on a site, `stop` first. */
export const flags: Verb = {
  name: 'flags',
  does: 'lists what the plan must settle, fix or warn of',
  places: ['SITE'],
  options: [],
  run: async ({ places: [path = '-'] }, io) => {
    const site = await readSite(io, path);
    if (!site.ok) return site;
    const { flags: found }: { readonly flags: readonly Flag[] } = layOutSite(site.value);
    const stopped = found.some(({ level }) => level === 'stop');
    return read({
      text: flagLines(site.value, found).join('\n'),
      json: found.map((flag) => ({
        ...flag,
        accepted: acceptedAs(site.value, flag)?.acceptance ?? null,
      })),
      stopped,
    });
  },
};
