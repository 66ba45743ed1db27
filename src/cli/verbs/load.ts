import type { Layout } from '../../engine/layout.ts';
import type { Load } from '../../engine/load/load.ts';
import { pricedLoad } from '../../engine/price/pricedLoad.ts';
import type { Site } from '../../site/site.ts';
import { hoursSourceText } from '../../drawing/tables/hoursTexts.ts';
import { priceTable } from '../../drawing/tables/priceTable.ts';
import { cutTable } from '../../drawing/tables/cutTable.ts';
import { loadTable } from '../../drawing/tables/loadTable.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { loadOf } from '../../engine/load/loadOf.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { isGiven, valueOf, type Call } from '../call.ts';
import type { Io } from '../io.ts';
import { moneyWritten } from '../moneyWritten.ts';
import { readPrices } from '../readPrices.ts';
import { readSite } from '../readSite.ts';
import { refusedLines } from '../refusedLines.ts';
import { tableLines } from '../tableLines.ts';
import type { Answer, Verb } from '../verb.ts';
import { languageOption } from '../languageOption.ts';
import { phrase } from '../../phrases/phrase.ts';

interface Laid {
  readonly site: Site;
  readonly layout: Layout;
  readonly load: Load;
}

type Told = Pick<Answer, 'text' | 'json'>;

/** The list, or the tickets by which it is cut. */
const listed = ({ site, load: found }: Laid, call: Call): Told => {
  const cuts = isGiven(call, 'cuts');
  const tables = cuts ? found.tickets.map((one) => cutTable(one, site)) : [loadTable(found, site)];
  const lines = tables.flatMap((table) => [
    ...(cuts ? [table.title] : []),
    ...(table.rows.length === 0 ? [] : tableLines(table)),
  ]);
  const text = isGiven(call, 'csv')
    ? toCsv(cuts ? phrase`Cut of` : phrase`List`, tables)
    : (lines.length === 0 ? [phrase`nothing to load`] : lines).join('\n');
  return { text, json: found };
};

/** The list priced by a company's file: every row that was not taken and every item without a price is named. */
const priced = async (
  { site, layout, load: found }: Laid,
  { file, call, io }: { readonly file: string; readonly call: Call; readonly io: Io },
): Promise<Parsed<Told>> => {
  const list = await readPrices(io, file);
  if (!list.ok) return list;
  const result = pricedLoad(site, layout, { load: found, list: list.value });
  const table = priceTable(result);
  const hours = hoursSourceText(result);
  if (isGiven(call, 'csv')) return read({ text: toCsv(phrase`List`, [table]), json: null });
  const lines = [
    ...refusedLines(file, list.value),
    ...tableLines(table),
    ...(result.unpriced.length === 0
      ? []
      : [phrase`no price for ${result.unpriced.join(', ')}: nothing of these is in the total`]),
    ...(hours === null ? [] : [phrase`hours: ${hours}`]),
  ];
  const json = moneyWritten({ ...result, refused: list.value.refused });
  return read({ text: lines.join('\n'), json });
};

/** `load`: everything that goes on the truck, each count with its rule. */
export const load: Verb = {
  name: 'load',
  does: phrase`lists what goes on the truck`,
  places: ['SITE'],
  options: [
    {
      name: 'csv',
      value: null,
      needed: false,
      repeats: false,
      does: phrase`prints the list for a spreadsheet`,
    },
    {
      name: 'cuts',
      value: null,
      needed: false,
      repeats: false,
      does: phrase`prints how sticks and rolls are cut instead of the list`,
    },
    {
      name: 'prices',
      value: 'FILE',
      needed: false,
      repeats: false,
      does: phrase`prices the list by a CSV: Item, Unit, Price, Currency, Number`,
    },
    languageOption,
  ],
  run: async (call, io) => {
    if (isGiven(call, 'csv') && isGiven(call, 'json')) {
      return unread(phrase`lath load: --csv and --json: expected one of them`);
    }
    const site = await readSite(io, call.places[0] ?? '-');
    if (!site.ok) return site;
    const layout = layOutSite(site.value);
    const laid: Laid = { site: site.value, layout, load: loadOf(site.value, layout) };
    const file = valueOf(call, 'prices');
    const answer =
      file === null ? read(listed(laid, call)) : await priced(laid, { file, call, io });
    if (!answer.ok) return answer;
    const stopped = layout.flags.some(({ level }) => level === 'stop');
    return read({ ...answer.value, stopped });
  },
};
