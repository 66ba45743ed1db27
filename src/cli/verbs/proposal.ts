import { proposal as proposalPage } from '../../drawing/proposal/proposal.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import type { Layout } from '../../engine/layout.ts';
import { loadOf } from '../../engine/load/loadOf.ts';
import {
  customerPrice,
  noPriceList,
  type CustomerPrice,
} from '../../engine/price/customerPrice.ts';
import { pricedLoad } from '../../engine/price/pricedLoad.ts';
import { surveyed } from '../../engine/survey/surveyed.ts';
import type { PricesRead } from '../../importers/csv/pricesFromCsv.ts';
import { checkValue } from '../../site/checkValue.ts';
import { sheetText } from '../../site/sheetText.ts';
import type { Site } from '../../site/site.ts';
import { formatMoney } from '../../units/money.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import { valueOf, type Call } from '../call.ts';
import type { Io } from '../io.ts';
import { pageOptions, pageOrderOf } from '../pageOrder.ts';
import { moneyWritten } from '../moneyWritten.ts';
import { readPrices } from '../readPrices.ts';
import { readDocument } from '../readSite.ts';
import { refusedLines } from '../refusedLines.ts';
import type { Answer, Verb } from '../verb.ts';
import { writePages } from '../writePages.ts';

const pricesAt = async (file: string | null, io: Io): Promise<Parsed<PricesRead | null>> =>
  file === null ? read(null) : readPrices(io, file);

const priceOf = (site: Site, layout: Layout, list: PricesRead | null): CustomerPrice =>
  list === null
    ? noPriceList
    : customerPrice(pricedLoad(site, layout, { load: loadOf(site, layout), list }), list);

/** What the page says of the price, for whoever hands it over. */
const priceLines = (price: CustomerPrice): string[] =>
  price.kind === 'told'
    ? [`  total ${price.currency} ${formatMoney(price.total)}`]
    : ['  no total: what is missing is', ...price.missing.map((what) => `    ${what}`)];

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const order = pageOrderOf(call, io);
  if (!order.ok) return order;
  const drawn = await readDocument(io, call.places[0] ?? '-');
  if (!drawn.ok) return drawn;
  const file = valueOf(call, 'prices');
  const prices = await pricesAt(file, io);
  if (!prices.ok) return prices;
  const { site } = surveyed(drawn.value, null);
  const layout = layOutSite(site);
  const price = priceOf(site, layout, prices.value);
  const siteText = sheetText(drawn.value);
  const { paper, way } = order.value;
  const lies = way === null ? {} : { orientation: way };
  const page = proposalPage(site, layout, { paper, ...lies, siteText, price });
  const written = { pages: [page], site, siteText, sort: 'Proposal' };
  const files = await writePages(order.value, written, io);
  if (!files.ok) return files;
  const check = checkValue(siteText);
  const lines = [
    ...(file === null || prices.value === null ? [] : refusedLines(file, prices.value)),
    `${files.value.join(', ')}: 1 page, ${page.paper.label}, check value ${check}`,
    ...priceLines(price),
  ];
  const json = { files: files.value, paper: page.paper.label, check, price: moneyWritten(price) };
  const stopped = layout.flags.some(({ level }) => level === 'stop');
  return read({ text: lines.join('\n'), json, stopped });
};

/** `proposal`: one page for the customer, with the plan and the total and nothing of what that is made up of. */
export const proposal: Verb = {
  name: 'proposal',
  does: 'prints a page for the customer',
  places: ['SITE'],
  options: [
    {
      name: 'prices',
      value: 'FILE',
      needed: false,
      repeats: false,
      does: 'the price list; without one there is no total',
    },
    ...pageOptions('upright unless given'),
  ],
  run,
};
