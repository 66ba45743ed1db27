import { missingLetters } from '../drawing/missingLetters.ts';
import { missingLettersText } from '../drawing/missingLettersText.ts';
import { usualPaper } from '../drawing/sheet/papers.ts';
import { sheetSet } from '../drawing/sheet/sheetSet.ts';
import { layOutSite } from '../engine/layOutSite.ts';
import { surveyed } from '../engine/survey/surveyed.ts';
import { checkValue } from '../site/checkValue.ts';
import { sheetText } from '../site/sheetText.ts';
import { siteFile } from '../site/siteFile.ts';
import { read, type Parsed } from '../units/parsed.ts';
import type { Io } from './io.ts';
import type { PageOrder } from './pageOrder.ts';
import { readDocument } from './readSite.ts';
import type { Answer } from './verb.ts';
import { writePages } from './writePages.ts';
import { phrase } from '../phrases/phrase.ts';

const manyPages = (count: number): string =>
  count === 1 ? phrase`1 page` : phrase`${count} pages`;

/** Writes the crew sheet of the site that a path names; says the files, their paper and pages. */
export const writeSheet = async (
  path: string,
  order: PageOrder,
  io: Io,
): Promise<Parsed<Answer>> => {
  const drawn = await readDocument(io, path);
  if (!drawn.ok) return drawn;
  const { site } = surveyed(drawn.value, null);
  const layout = layOutSite(site);
  const siteText = sheetText(drawn.value);
  const { paper, way, reader } = order;
  const size = paper ?? usualPaper(site.lengths.system);
  const whose = reader === null ? {} : { reader };
  const lies = way === null ? {} : { orientation: way };
  const pages = sheetSet(site, layout, { paper: size, ...lies, ...whose, siteText });
  const set = { sort: 'Crew sheet', siteText, file: siteFile(drawn.value) } as const;
  const files = await writePages(order, { pages, site, ...set }, io);
  if (!files.ok) return files;
  const check = checkValue(siteText);
  const label = [...new Set(pages.map(({ paper: own }) => own.label))].join(phrase` and `);
  const lacks = missingLettersText(missingLetters(site, pages));
  const text = [
    phrase`${files.value.join(', ')}: ${manyPages(pages.length)}, ${label}, check value ${check}`,
    ...pages.map(({ title }) => `  ${title}`),
    ...(lacks === null ? [] : [lacks]),
  ];
  const json = {
    files: files.value,
    paper: label,
    check,
    pages: pages.map(({ title }) => title),
    lacks,
  };
  const stopped = layout.flags.some(({ level }) => level === 'stop');
  return read({ text: text.join('\n'), json, stopped });
};
