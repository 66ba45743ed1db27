import type { Site } from '../site/site.ts';
import { isPrintable } from './textWidth.ts';

/** Letters that the sheet font lacks, each once, and in what of a site they stand. */
export interface MissingLetters {
  readonly where: string;
  readonly letters: string;
}

/** What the parts of a site are called where a letter is missing in one. */
const names: Readonly<Record<string, string>> = {
  job: 'the job',
  features: 'what lies in the yard',
  gates: 'the gates',
  lines: 'the fence lines',
  marks: 'the marks',
  specs: 'the builds',
  hardware: 'the hardware',
  townRules: 'the rules of towns',
  acceptances: 'what was accepted',
  alternatives: 'other ways to build it',
  offcuts: 'what lies in the yard of the company',
};

/** Letters of a text that would be printed as `?`: those of `printable`. */
const lackedIn = (text: string): string[] =>
  [...text.normalize('NFC').replace(/\s+/gu, ' ')].filter((letter) => !isPrintable(letter));

/** Every text anywhere in a value. Names of entries are ids and not printed. */
const textsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
};

/**
 * Which letters of the texts of a site the font of the sheets lacks, part by part: they print as `?`.
 * Pictures under the drawing are on no sheet and not looked at.
 */
export const missingLetters = (site: Site): readonly MissingLetters[] =>
  Object.entries(site).flatMap(([part, value]): MissingLetters[] => {
    if (part === 'underlays' || part === 'pictures') return [];
    const letters = [...new Set(textsIn(value).flatMap(lackedIn))].join('');
    return letters === '' ? [] : [{ where: names[part] ?? part, letters }];
  });

/** So many letters are enough to know which script it is. */
const mostShown = 12;

/** One line that says what of a site cannot be printed; null where all can. */
export const missingLettersText = (site: Site): string | null => {
  const missing = missingLetters(site);
  if (missing.length === 0) return null;
  const all = [...new Set(missing.flatMap(({ letters }) => [...letters]))];
  const shown = all.slice(0, mostShown).join('');
  const more = all.length > mostShown ? '…' : '';
  const where = missing.map((one) => one.where).join(', ');
  return `The font of the sheets has no letters for “${shown}${more}” in ${where}: each is printed as ?`;
};
