import { comparedLoadTable } from '../../drawing/tables/comparedLoadTable.ts';
import { comparisonTable } from '../../drawing/tables/comparisonTable.ts';
import { hoursSourceText } from '../../drawing/tables/hoursTexts.ts';
import { unpricedTexts } from '../../drawing/tables/unpricedTexts.ts';
import { candidatesOf } from '../../engine/compare/candidatesOf.ts';
import type { Named } from '../../engine/compare/candidate.ts';
import { comparisonOf, type Comparison } from '../../engine/compare/comparison.ts';
import { namedSites } from '../../engine/compare/namedSites.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import type { PricesRead } from '../../importers/csv/pricesFromCsv.ts';
import type { Site } from '../../site/site.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { isGiven, valueOf, type Call } from '../call.ts';
import type { Io } from '../io.ts';
import { moneyWritten } from '../moneyWritten.ts';
import { readPrices } from '../readPrices.ts';
import { readSite } from '../readSite.ts';
import { refusedLines } from '../refusedLines.ts';
import { tableLines } from '../tableLines.ts';
import type { Verb } from '../verb.ts';
import { languageOption } from '../languageOption.ts';
import { phrase } from '../../phrases/phrase.ts';

/** One file as it is drawn and as its alternatives have it; of several each as it is drawn, by its path. */
const namedIn = async (io: Io, paths: readonly string[]): Promise<Parsed<readonly Named[]>> => {
  const named: Named[] = [];
  for (const path of paths) {
    const site = await readSite(io, path);
    if (!site.ok) return site;
    if (paths.length === 1) return read(namedSites(site.value));
    const label = path === '-' ? phrase`standard input` : path;
    named.push({ label, alternative: null, site: site.value });
  }
  return read(named);
};

const textOf = (
  comparison: Comparison,
  site: Pick<Site, 'lengths'>,
  prices: { readonly file: string; readonly list: PricesRead } | null,
): string => {
  const alone = comparison.columns.length === 1;
  const lists = tableLines(comparedLoadTable(comparison, site));
  const hours = hoursSourceText({
    tasks: comparison.columns.flatMap(({ priced }) => priced?.tasks ?? []),
  });
  return [
    ...(prices === null ? [] : refusedLines(prices.file, prices.list)),
    ...tableLines(comparisonTable(comparison, site)),
    '',
    ...(alone ? [phrase`no alternatives to compare it with`] : []),
    ...(!alone && lists.length === 0 ? [phrase`the load lists do not differ`] : lists),
    ...unpricedTexts(comparison),
    ...(hours === null ? [] : [phrase`hours: ${hours}`]),
  ].join('\n');
};

/** What is printed of a column: what was drawn and laid out is what `layout` prints. */
const columnJson = ({
  label,
  alternative,
  layout,
  load,
  ...column
}: Comparison['columns'][number]): unknown => ({
  label,
  alternative,
  posts: column.posts,
  holes: column.holes,
  fence: column.fence,
  stops: column.stops,
  settles: column.settles,
  flags: layout.flags.filter(({ level }) => level !== 'caution'),
  load: load.lines,
  priced: column.priced,
  costs: column.costs,
  more: column.more,
});

const jsonOf = ({ columns, lines }: Comparison, list: PricesRead | null): unknown =>
  moneyWritten({ columns: columns.map(columnJson), lines, refused: list?.refused ?? [] });

const listIn = async (io: Io, call: Call): Promise<Parsed<PricesRead | null>> => {
  const file = valueOf(call, 'prices');
  return file === null ? read(null) : readPrices(io, file);
};

/** `compare`: a yard and its alternatives, or several yards, side by side. */
export const compare: Verb = {
  name: 'compare',
  does: phrase`puts a yard beside its alternatives, or several yards side by side`,
  places: ['SITE', '[OTHER …]'],
  options: [
    {
      name: 'prices',
      value: 'FILE',
      needed: false,
      repeats: false,
      does: phrase`prices each by a CSV: Item, Unit, Price, Currency, Number`,
    },
    {
      name: 'csv',
      value: null,
      needed: false,
      repeats: false,
      does: phrase`prints the tables for a spreadsheet`,
    },
    languageOption,
  ],
  run: async (call, io) => {
    if (isGiven(call, 'csv') && isGiven(call, 'json')) {
      return unread(phrase`lath compare: --csv and --json: expected one of them`);
    }
    const named = await namedIn(io, call.places);
    if (!named.ok) return named;
    const list = await listIn(io, call);
    if (!list.ok) return list;
    const comparison = comparisonOf(candidatesOf(named.value), list.value);
    const [first] = comparison.columns;
    if (first === undefined) return unread(phrase`lath compare: SITE is missing`);
    const tables = [comparisonTable, comparedLoadTable].map((table) =>
      table(comparison, first.site),
    );
    const file = valueOf(call, 'prices') ?? '';
    const prices = list.value === null ? null : { file, list: list.value };
    return read({
      text: isGiven(call, 'csv')
        ? toCsv(phrase`Table`, tables)
        : textOf(comparison, first.site, prices),
      json: jsonOf(comparison, list.value),
      stopped: comparison.columns.some(
        ({ alternative, stops }) => alternative === null && stops > 0,
      ),
    });
  },
};
