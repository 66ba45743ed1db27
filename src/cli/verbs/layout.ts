import type { Layout } from '../../engine/layout.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { tapeReadings } from '../../engine/posts/tapeReadings.ts';
import { setOf } from '../../engine/set/setOf.ts';
import type { Site } from '../../site/site.ts';
import { read } from '../../units/parsed.ts';
import { flagLines } from '../flagLines.ts';
import { layoutLines } from '../layoutLines.ts';
import { readSite } from '../readSite.ts';
import type { Verb } from '../verb.ts';
import { languageOption } from '../languageOption.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Readings of every run by its id, as the sheets print them. */
const readingsOf = (site: Site, { lines }: Layout) =>
  Object.fromEntries(
    Object.values(lines).flatMap(({ id, runs }) =>
      runs.map((run) => [run.id, tapeReadings(run, site.lines[id]?.hook ?? 'start', site.lengths)]),
    ),
  );

/** What comes of the posts of every gate that was set, by its id. */
const setsOf = (site: Site, { gates }: Layout) =>
  Object.fromEntries(
    Object.values(gates).flatMap(({ id }) => {
      const gate = site.gates[id];
      const set = gate === undefined ? null : setOf(site, gate);
      return set === null ? [] : [[id, set]];
    }),
  );

/** `layout`: posts, bays, openings and flags of a site. */
export const layout: Verb = {
  name: 'layout',
  does: phrase`lays a site out: posts, bays, openings, flags`,
  places: ['SITE'],
  options: [languageOption],
  run: async ({ places: [path = '-'] }, io) => {
    const site = await readSite(io, path);
    if (!site.ok) return site;
    const laid = layOutSite(site.value);
    const { lines, posts, gates, flags } = laid;
    const text = [
      ...layoutLines({ site: site.value, layout: laid }),
      '',
      ...flagLines(site.value, flags),
    ].join('\n');
    const readings = readingsOf(site.value, laid);
    const set = setsOf(site.value, laid);
    const stopped = flags.some(({ level }) => level === 'stop');
    return read({ text, json: { lines, readings, posts, gates, set, flags }, stopped });
  },
};
