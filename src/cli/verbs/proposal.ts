import { proposal as proposalPage } from '../../drawing/proposal/proposal.ts';
import { usualPaper } from '../../drawing/sheet/papers.ts';
import { candidatesOf } from '../../engine/compare/candidatesOf.ts';
import { customerPrices, type CustomerPrices } from '../../engine/compare/customerPrices.ts';
import { namedSites } from '../../engine/compare/namedSites.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { surveyed } from '../../engine/survey/surveyed.ts';
import type { PricesRead } from '../../importers/csv/pricesFromCsv.ts';
import { checkValue } from '../../site/checkValue.ts';
import { sheetText } from '../../site/sheetText.ts';
import { formatMoney, type Money } from '../../units/money.ts';
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
import { languageOption } from '../languageOption.ts';
import { phrase } from '../../phrases/phrase.ts';

const pricesAt = async (file: string | null, io: Io): Promise<Parsed<PricesRead | null>> =>
  file === null ? read(null) : readPrices(io, file);

/** What the page says of the price, and what it cannot say yet, for whoever hands it over. */
const priceLines = ({ price, others, missing }: CustomerPrices): string[] => {
  if (price.kind === 'open') {
    return [`  ${phrase`no total: what is missing is`}`, ...missing.map((what) => `    ${what}`)];
  }
  const total = (label: string, amount: Money): string => {
    const sum = phrase`total ${price.currency} ${formatMoney(amount)}`;
    return `  ${sum}${label === '' ? '' : `, ${label}`}`;
  };
  return [
    total('', price.total),
    ...others.map((other) => total(other.label, other.total)),
    ...(missing.length === 0
      ? []
      : [
          `  ${phrase`no other ways to build it: what is missing is`}`,
          ...missing.map((what) => `    ${what}`),
        ]),
  ];
};

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const order = pageOrderOf(call);
  if (!order.ok) return order;
  const drawn = await readDocument(io, call.places[0] ?? '-');
  if (!drawn.ok) return drawn;
  const file = valueOf(call, 'prices');
  const prices = await pricesAt(file, io);
  if (!prices.ok) return prices;
  const { site } = surveyed(drawn.value, null);
  const candidates = candidatesOf(namedSites(site));
  const layout = candidates[0]?.layout ?? layOutSite(site);
  const told = customerPrices(candidates, prices.value);
  const siteText = sheetText(drawn.value);
  const { paper: asked, way } = order.value;
  const paper = asked ?? usualPaper(site.lengths.system);
  const lies = way === null ? {} : { orientation: way };
  const page = proposalPage(site, layout, { paper, ...lies, siteText, prices: told });
  // whoever is handed it sees no more than the page
  const written = { pages: [page], site, siteText, sort: 'Proposal', file: null } as const;
  const files = await writePages(order.value, written, io);
  if (!files.ok) return files;
  const check = checkValue(siteText);
  const lines = [
    ...(file === null || prices.value === null ? [] : refusedLines(file, prices.value)),
    phrase`${files.value.join(', ')}: 1 page, ${page.paper.label}, check value ${check}`,
    ...priceLines(told),
  ];
  const json = { files: files.value, paper: page.paper.label, check, prices: moneyWritten(told) };
  const stopped = layout.flags.some(({ level }) => level === 'stop');
  return read({ text: lines.join('\n'), json, stopped });
};

/** `proposal`: one page for the customer, with the plan and the total and nothing of what that is made up of. */
export const proposal: Verb = {
  name: 'proposal',
  does: phrase`prints a page for the customer`,
  places: ['SITE'],
  options: [
    {
      name: 'prices',
      value: 'FILE',
      needed: false,
      repeats: false,
      does: phrase`the price list; without one there is no total`,
    },
    ...pageOptions(phrase`upright unless given`),
    languageOption,
  ],
  run,
};
