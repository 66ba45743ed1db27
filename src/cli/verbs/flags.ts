import { acceptedAs } from '../../engine/acceptedAs.ts';
import type { Flag } from '../../engine/flag.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { read } from '../../units/parsed.ts';
import { isGiven } from '../call.ts';
import { flagLines } from '../flagLines.ts';
import { readSite } from '../readSite.ts';
import type { Verb } from '../verb.ts';
import { workingLines } from '../workingLines.ts';
import { languageOption } from '../languageOption.ts';
import { phrase } from '../../phrases/phrase.ts';

/** `flags`: what stands on a site, `stop` first. */
export const flags: Verb = {
  name: 'flags',
  does: phrase`lists what the plan must settle, fix or warn of`,
  places: ['SITE'],
  options: [
    {
      name: 'working',
      value: null,
      needed: false,
      repeats: false,
      does: phrase`also what posts and leaves were compared with`,
    },
    languageOption,
  ],
  run: async (call, io) => {
    const [path = '-'] = call.places;
    const site = await readSite(io, path);
    if (!site.ok) return site;
    const layout = layOutSite(site.value);
    const found: readonly Flag[] = layout.flags;
    const working = isGiven(call, 'working') ? workingLines(site.value, layout) : [];
    const stopped = found.some(({ level }) => level === 'stop');
    return read({
      text: [...flagLines(site.value, found), ...working].join('\n'),
      json: found.map((flag) => ({
        ...flag,
        accepted: acceptedAs(site.value, flag)?.acceptance ?? null,
      })),
      stopped,
    });
  },
};
