import type { Site } from '../site/site.ts';
import { printable } from './printable.ts';
import type { Page } from './sheet/page.ts';
import { pageAtoms } from './sheet/pageAtoms.ts';
import type { Atom } from './atom.ts';
import { isPrintable } from './textWidth.ts';
import { phrase } from '../phrases/phrase.ts';

/** Letters that the sheet font lacks, each once, and in what of a site they stand. */
export interface MissingLetters {
  readonly where: string;
  readonly letters: string;
}

/** What fields of the job are called on the screen, and parts of a site. */
const names: Readonly<Record<string, string>> = {
  'job name': phrase`Job name`,
  'job customer': phrase`Customer`,
  'job place': phrase`Place`,
  'job drawnBy': phrase`Drawn by`,
  'job date': phrase`Date`,
  'job revision': phrase`Revision`,
  'job remark': phrase`Remarks`,
  features: phrase`what lies in the yard`,
  gates: phrase`the gates`,
  lines: phrase`the fence lines`,
  marks: phrase`the marks`,
  observations: phrase`the tapes`,
  shots: phrase`the grade shots`,
  specs: phrase`the builds`,
  hardware: phrase`the hardware`,
  townRules: phrase`the rules of towns`,
  acceptances: phrase`what was accepted`,
  alternatives: phrase`other ways to build it`,
  offcuts: phrase`what lies in the yard of the company`,
};

/** A word of a text and what it was before it was made printable. */
interface Word {
  readonly was: string;
  readonly printed: string;
}

const wordsOf = (text: string): Word[] =>
  text
    .normalize('NFC')
    .split(/\s+/u)
    .filter((was) => was !== '')
    .map((was) => ({ was, printed: printable(was) }));

const lacks = ({ was }: Word): boolean => [...was].some((letter) => !isPrintable(letter));

/** Every text anywhere in a value. Names of entries are ids and not printed. */
const textsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
};

/** The job is looked at field by field; pictures are on no sheet, and hold letters by the million. */
const unprinted: readonly string[] = ['job', 'underlays', 'pictures'];

/** The words of each part of a site, of each field of its job. */
const wordsByPart = (site: Site): (readonly [string, readonly Word[]])[] => {
  const parts = [
    ...Object.entries(site.job).map(([field, value]) => [`job ${field}`, value] as const),
    ...Object.entries(site).filter(([part]) => !unprinted.includes(part)),
  ];
  return parts.map(([part, value]) => [
    names[part] ?? part,
    textsIn(value).flatMap((text) => wordsOf(text)),
  ]);
};

const lettersOn = (atoms: readonly Atom[]): string[] =>
  atoms.flatMap((atom) => {
    if (atom.do === 'clip') return lettersOn(atom.atoms);
    return atom.do === 'text' && atom.text.includes('?') ? [atom.text] : [];
  });

/** How many letters before a `?` say which word it is of. */
const before = 3;

/** The texts of pages that have a `?` besides those that somebody typed and that stand for nothing else. */
const doubted = (pages: readonly Page[], words: readonly Word[]): string[] => {
  const put = new Set(words.filter(lacks).map(({ printed }) => printed));
  const typed = new Set(
    words.flatMap(({ was, printed }) => (was.includes('?') && !put.has(printed) ? [printed] : [])),
  );
  const honest = [...typed].toSorted((a, b) => b.length - a.length);
  return pages
    .flatMap((page) => lettersOn(pageAtoms(page)))
    .map((text) => honest.reduce((rest, word) => rest.replaceAll(word, ' '), text))
    .filter((text) => text.includes('?'));
};

/** The letters of a word that stand as `?` in one of some texts, which may be cut off behind any. */
const shownOf = ({ was, printed }: Word, texts: readonly string[]): string[] => {
  const signs = [...printed];
  return [...was].filter((letter, n) => {
    const upTo = signs.slice(Math.max(0, n - before), n + 1).join('');
    return !isPrintable(letter) && texts.some((text) => text.includes(upTo));
  });
};

/**
 * Which letters of the texts of a site the font of the sheets lacks, part by part, as far as they are
 * printed on some page: they stand there as `?`. None where every `?` of the pages was typed; one that was
 * typed just where a letter that no page prints would have its own is taken for that.
 */
export const missingLetters = (site: Site, pages: readonly Page[]): readonly MissingLetters[] => {
  const parts = wordsByPart(site);
  const all = parts.flatMap(([, words]) => words);
  // nearly every site has all of its letters
  if (!all.some(lacks)) return [];
  const texts = doubted(pages, all);
  return parts.flatMap(([where, words]): MissingLetters[] => {
    const letters = new Set(words.filter(lacks).flatMap((word) => shownOf(word, texts)));
    return letters.size === 0 ? [] : [{ where, letters: [...letters].join('') }];
  });
};
