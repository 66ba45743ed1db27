import { layOutSite } from '../../engine/layOutSite.ts';
import type { Layout } from '../../engine/layout.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { valueOf, type Call } from '../call.ts';
import { endingIn } from '../endingIn.ts';
import type { Io } from '../io.ts';
import { pageEndings, pageOrderOf, paperOptions, readerOption } from '../pageOrder.ts';
import { readSite } from '../readSite.ts';
import { takenFile } from '../takenFile.ts';
import { tableOptions, takenOf } from '../takenOf.ts';
import type { Answer, Verb } from '../verb.ts';
import { writeSheet } from '../writeSheet.ts';
import { languageOption } from '../languageOption.ts';
import { phrase } from '../../phrases/phrase.ts';

const textEndings = ['geojson', 'dxf', 'csv'] as const;

const countsOf = ({ lines, posts, gates }: Layout) => ({
  lines: Object.keys(lines).length,
  posts: posts.size,
  gates: Object.values(gates).filter(({ placed }) => placed).length,
});

/** One file of text: what it has is said by its rows where it is a table, else by what stands in it. */
const takeText = async (
  call: Call,
  ending: (typeof textEndings)[number],
  io: Io,
): Promise<Parsed<Answer>> => {
  const taken = takenOf(call, ending);
  if (!taken.ok) return taken;
  const path = call.places[0] ?? '-';
  const site = await readSite(io, path);
  if (!site.ok) return site;
  const layout = layOutSite(site.value);
  const content = takenFile(taken.value, site.value, layout);
  if (!content.ok) return unread(`${path}: ${content.reason}`);
  const { text: whole, rows, mind } = content.value;
  const file = await io.writeFile(valueOf(call, 'out') ?? '', whole);
  if (!file.ok) return file;
  const stopped = layout.flags.some(({ level }) => level === 'stop');
  if (rows !== null) {
    const text = rows === 1 ? phrase`${file.value}: 1 row` : phrase`${file.value}: ${rows} rows`;
    const said = mind === null ? null : `${file.value}: ${mind}`;
    return read({ text, json: { file: file.value, rows }, stopped, mind: said });
  }
  const counts = countsOf(layout);
  const text = phrase`${file.value}: ${counts.lines} fence lines, ${counts.posts} posts, ${counts.gates} gates`;
  return read({ text, json: { file: file.value, ...counts }, stopped });
};

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const out = valueOf(call, 'out') ?? '';
  const ending = endingIn(out, textEndings);
  if (ending !== null && valueOf(call, 'for') !== null) {
    return unread(
      phrase`--for: only sheets are for a reader: a file that ends in .pdf, .svg or .png`,
    );
  }
  if (ending !== null && valueOf(call, 'dpi') !== null) {
    return unread(phrase`--dpi: only a file that ends in .png has a resolution`);
  }
  if (ending !== null) return takeText(call, ending, io);
  if (endingIn(out, pageEndings) === null) {
    return unread(
      phrase`--out: ${quotedText(out)}: expected a file name that ends in .geojson, .dxf, .csv, .pdf, .svg or .png`,
    );
  }
  const table = takenOf(call, 'dxf');
  if (!table.ok) return table;
  const order = pageOrderOf(call);
  return order.ok ? writeSheet(call.places[0] ?? '-', order.value, io) : order;
};

/** `take`: a site as GeoJSON, DXF, stakes or another table, or its sheets as `sheet` writes them. */
export const take: Verb = {
  name: 'take',
  does: phrase`takes a site out as GeoJSON, DXF, a table or sheets`,
  places: ['SITE'],
  options: [
    {
      name: 'out',
      value: 'FILE.geojson|.dxf|.csv|.pdf|.svg|.png',
      needed: true,
      repeats: false,
      does: phrase`the file to write`,
    },
    ...tableOptions,
    ...paperOptions(phrase`else the larger plan, lists as more of them fits`),
    readerOption,
    languageOption,
  ],
  run,
};
