import { layOutSite } from '../../engine/layOutSite.ts';
import type { Layout } from '../../engine/layout.ts';
import { stakesToCsv } from '../../exporters/csv/stakesToCsv.ts';
import { toDxf } from '../../exporters/dxf/toDxf.ts';
import { toGeoJson } from '../../exporters/geojson/toGeoJson.ts';
import type { Site } from '../../site/site.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { valueOf, type Call } from '../call.ts';
import { choiceOf } from '../choiceOf.ts';
import type { Io } from '../io.ts';
import { readSite } from '../readSite.ts';
import type { Answer, Verb } from '../verb.ts';

type Ending = 'geojson' | 'dxf' | 'csv';

/** How stakes are written: their unit, and what is added to their coordinates in it. */
interface Stakes {
  readonly unit: 'feet' | 'metres';
  readonly east: number;
  readonly north: number;
}

const endingOf = (out: string): Parsed<Ending> => {
  const ending = /[^/\\]\.(geojson|dxf|csv)$/i.exec(out)?.[1]?.toLowerCase();
  if (ending === 'geojson' || ending === 'dxf' || ending === 'csv') return read(ending);
  return unread(
    `--out: ${quotedText(out)}: expected a file name that ends in .geojson, .dxf or .csv`,
  );
};

const numberOf = (call: Call, name: string): Parsed<number> => {
  const text = valueOf(call, name);
  if (text === null) return read(0);
  if (/^[-+]?(?:\d+\.?\d*|\.\d+)$/.test(text) && Math.abs(Number(text)) <= 1e9) {
    return read(Number(text));
  }
  return unread(`--${name}: ${quotedText(text)}: expected a number such as 2100000`);
};

const stakesOf = (call: Call): Parsed<Stakes> => {
  const unit = choiceOf(call, 'unit', ['feet', 'metres'] as const);
  if (!unit.ok) return unit;
  const east = numberOf(call, 'east');
  if (!east.ok) return east;
  const north = numberOf(call, 'north');
  if (!north.ok) return north;
  return read({ unit: unit.value ?? 'feet', east: east.value, north: north.value });
};

const inchesIn = { feet: 12, metres: 1000 / 25.4 } as const;

const written = (ending: Ending, site: Site, layout: Layout, stakes: Stakes): Parsed<string> => {
  if (ending === 'dxf') return read(toDxf(site, layout));
  if (ending === 'geojson') return toGeoJson(site, layout);
  const each = inchesIn[stakes.unit];
  const { unit, east, north } = stakes;
  return read(stakesToCsv(site, layout, { unit, east: east * each, north: north * each }));
};

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const out = valueOf(call, 'out') ?? '';
  const ending = endingOf(out);
  if (!ending.ok) return ending;
  const stakes = stakesOf(call);
  if (!stakes.ok) return stakes;
  const path = call.places[0] ?? '-';
  const site = await readSite(io, path);
  if (!site.ok) return site;
  const layout = layOutSite(site.value);
  const content = written(ending.value, site.value, layout, stakes.value);
  if (!content.ok) return unread(`${path}: ${content.reason}`);
  const file = await io.writeFile(out, content.value);
  if (!file.ok) return file;
  const counts = {
    lines: Object.keys(layout.lines).length,
    posts: Object.keys(layout.posts).length,
    gates: Object.values(layout.gates).filter(({ placed }) => placed).length,
  };
  const text = `${file.value}: ${counts.lines} fence lines, ${counts.posts} posts, ${counts.gates} gates`;
  const stopped = layout.flags.some(({ level }) => level === 'stop');
  return read({ text, json: { file: file.value, ...counts }, stopped });
};

const option = { needed: false, repeats: false };

/** `take`: a site as GeoJSON, DXF, or stakes for a total station. */
export const take: Verb = {
  name: 'take',
  does: 'takes a site out as GeoJSON, DXF, or stakes for a total station',
  places: ['SITE'],
  options: [
    {
      ...option,
      name: 'out',
      value: 'FILE.geojson|.dxf|.csv',
      needed: true,
      does: 'the file to write',
    },
    { ...option, name: 'unit', value: 'feet|metres', does: 'of stakes; feet unless given' },
    { ...option, name: 'east', value: 'NUMBER', does: 'added to every easting of stakes' },
    { ...option, name: 'north', value: 'NUMBER', does: 'added to every northing of stakes' },
  ],
  run,
};
