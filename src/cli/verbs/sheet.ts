import { checkValue } from '../../site/checkValue.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { papers, type Orientation, type PaperName } from '../../drawing/sheet/papers.ts';
import { sheetSet } from '../../drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { surveyed } from '../../engine/survey/surveyed.ts';
import { pdfInfoFor } from '../../exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../../exporters/pdf/toPdf.ts';
import { toSvg } from '../../exporters/svg/toSvg.ts';
import { sheetText } from '../../site/sheetText.ts';
import type { Site } from '../../site/site.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { valueOf, type Call } from '../call.ts';
import { choiceOf } from '../choiceOf.ts';
import type { Io } from '../io.ts';
import { readDocument } from '../readSite.ts';
import type { Answer, Verb } from '../verb.ts';

interface Order {
  readonly out: string;
  readonly ending: 'pdf' | 'svg';
  readonly paper: PaperName;
  readonly way: Orientation | null;
  readonly date: string;
}

const paperNames = Object.keys(papers) as PaperName[];

const endingOf = (out: string): Parsed<Order['ending']> => {
  const ending = /[^/\\]\.(pdf|svg)$/i.exec(out)?.[1]?.toLowerCase();
  if (ending === 'pdf' || ending === 'svg') return read(ending);
  return unread(`--out: ${quotedText(out)}: expected a file name that ends in .pdf or .svg`);
};

const ways: readonly Orientation[] = ['portrait', 'landscape'];

/** A day of the calendar: 2026-02-30 is none. */
const dateOf = (call: Call, io: Io): Parsed<string> => {
  const text = valueOf(call, 'date') ?? io.today();
  const day = /^\d{4}-\d\d-\d\d$/.test(text) ? new Date(`${text}T00:00:00Z`) : null;
  const stays = day !== null && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
  return stays
    ? read(text)
    : unread(`--date: ${quotedText(text)}: expected a day such as 2026-11-25`);
};

const orderOf = (call: Call, io: Io): Parsed<Order> => {
  const out = valueOf(call, 'out') ?? '';
  const ending = endingOf(out);
  if (!ending.ok) return ending;
  const paper = choiceOf(call, 'paper', paperNames);
  if (!paper.ok) return paper;
  const way = choiceOf(call, 'way', ways);
  if (!way.ok) return way;
  const date = dateOf(call, io);
  if (!date.ok) return date;
  return read({
    out,
    ending: ending.value,
    paper: paper.value ?? 'letter',
    way: way.value,
    date: date.value,
  });
};

/** `yard.svg` for one page, `yard-1.svg`, `yard-2.svg` … for several: an SVG holds one page. */
const svgNames = (out: string, count: number): string[] =>
  Array.from({ length: count }, (_, n) =>
    count === 1 ? out : out.replace(/(\.[^.]*)$/, `-${n + 1}$1`),
  );

const write = async (
  { out, ending, date, siteText }: Order & { readonly siteText: string },
  pages: readonly Page[],
  site: Site,
  io: Io,
): Promise<Parsed<readonly string[]>> => {
  if (ending === 'pdf') {
    const fonts = { regular: await io.readFont('regular'), bold: await io.readFont('bold') };
    const info = pdfInfoFor(site, siteText, `${date}T00:00:00Z`);
    const file = await io.writeFile(out, toPdf(pages, fonts, info));
    return file.ok ? read([file.value]) : file;
  }
  const files: string[] = [];
  for (const [n, name] of svgNames(out, pages.length).entries()) {
    const page = pages[n];
    if (page === undefined) continue;
    const file = await io.writeFile(name, toSvg(page));
    if (!file.ok) return file;
    files.push(file.value);
  }
  return read(files);
};

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const order = orderOf(call, io);
  if (!order.ok) return order;
  const drawn = await readDocument(io, call.places[0] ?? '-');
  if (!drawn.ok) return drawn;
  const { site } = surveyed(drawn.value, null);
  const layout = layOutSite(site);
  const siteText = sheetText(drawn.value);
  const { paper: size, way } = order.value;
  const lies = way === null ? {} : { orientation: way };
  const pages = sheetSet(site, layout, { paper: size, ...lies, siteText });
  const files = await write({ ...order.value, siteText }, pages, site, io);
  if (!files.ok) return files;
  const check = checkValue(siteText);
  const paper = pages[0]?.paper.label ?? '';
  const text = [
    `${files.value.join(', ')}: ${pages.length} page${pages.length === 1 ? '' : 's'}, ${paper}, check value ${check}`,
    ...pages.map(({ title }) => `  ${title}`),
  ];
  const json = { files: files.value, paper, check, pages: pages.map(({ title }) => title) };
  const stopped = layout.flags.some(({ level }) => level === 'stop');
  return read({ text: text.join('\n'), json, stopped });
};

const option = { needed: false, repeats: false };

/** `sheet`: the crew sheet as a PDF, or page by page as SVG; the same pages as on the screen. */
export const sheet: Verb = {
  name: 'sheet',
  does: 'prints the crew sheet',
  places: ['SITE'],
  options: [
    { ...option, name: 'out', value: 'FILE.pdf|.svg', needed: true, does: 'the file to write' },
    {
      ...option,
      name: 'paper',
      value: paperNames.join('|'),
      does: 'the paper; letter unless given',
    },
    { ...option, name: 'way', value: ways.join('|'), does: 'how it lies; else the larger plan' },
    { ...option, name: 'date', value: 'YYYY-MM-DD', does: 'the day the file bears; else today' },
  ],
  run,
};
