import { openDocument } from '../../src/site/openDocument.ts';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import type { Site } from '../../src/site/site.ts';
import type { Taken } from './readers.ts';

/** As long as a line that refuses a file may be, characters: as the command line's tests have it. */
export const longestLine = 300;

/** What an engine of JavaScript says where nobody thought of it. */
const unforeseen =
  /call stack|Invalid (?:array|string|typed|count|time)|is not (?:a function|iterable|defined)|Cannot (?:read|convert|access)|undefined|\bNaN\b|\[object |out of memory|Unexpected token|must be/i;

/** Whatever ends a line, and marks that no screen shows. */
const unshown = /[\p{Cc}\u2028\u2029]/u;

/** What a line quotes of the file says nothing of who wrote the line. */
const unquoted = (line: string): string => line.replace(/“[^”]*”?|"(?:[^"\\]|\\.)*"?/g, '“”');

const lineFault = (line: string, input: string): string | null => {
  if (line.trim() === '') return 'a line that says nothing';
  if (unshown.test(line)) return `more than one line: ${JSON.stringify(line.slice(0, 120))}`;
  if (line.length > longestLine)
    return `a line of ${line.length} characters: ${line.slice(0, 120)}`;
  const word = unforeseen.exec(unquoted(line))?.[0];
  // a name may be any word: what the file has says nothing of who wrote the line
  return word === undefined || input.includes(word) ? null : `an unforeseen line: ${line}`;
};

const siteFault = (site: Site): string | null => {
  const text = saveSite(site);
  const document = openDocument(JSON.parse(text) as unknown);
  if (!document.ok) return `half-opened: ${document.reason}`;
  const again = openSite(text);
  if (!again.ok) return `half-opened, its file is refused: ${again.reason}`;
  return saveSite(again.value) === text ? null : 'half-opened: saved again it is another file';
};

/** What is wrong with what a reader made of an input, which is given as text: a site that opens no more, lines that are none; null for nothing. */
export const faultOf = ({ sites, lines }: Taken, input: string): string | null =>
  sites.map(siteFault).find((one) => one !== null) ??
  lines.map((line) => lineFault(line, input)).find((one) => one !== null) ??
  null;
