import { openSite } from '../../site/openSite.ts';
import type { Site } from '../../site/site.ts';
import { siteEnding } from '../../site/siteFile.ts';
import { unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { HeldFile } from './heldFile.ts';
import { holdsWord } from './holdsWord.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a PDF carries for this program: nothing at all, other files alone, or a site or one line why not. */
export type InPdf =
  | { readonly is: 'nothing' }
  | { readonly is: 'foreign'; readonly why: string }
  | { readonly is: 'site'; readonly site: Parsed<Site> };

/**
 * What a PDF with a file, one with a password and one with a file of JSON have in them. They stand in no part
 * that is packed or locked, so a large PDF without files need not be taken apart.
 */
const signs = { file: '/EmbeddedFile', password: '/Encrypt', json: 'application#2Fjson' };

const isSiteFile = ({ name }: HeldFile): boolean => name.toLowerCase().endsWith(siteEnding);

const opened = async ({ name, bytes }: HeldFile): Promise<Parsed<Site>> => {
  const held = await bytes();
  if (!held.ok) return unread(phrase`the site file in it, ${quotedText(name)}: ${held.reason}`);
  // a stray byte spoils a text or a name, and the rest of the drawing can still be had
  const site = openSite(new TextDecoder('utf-8').decode(held.value));
  return site.ok ? site : unread(phrase`the site file in it, ${quotedText(name)}: ${site.reason}`);
};

const most = 3;

const listed = (files: readonly HeldFile[]): string => {
  const names = files.slice(0, most).map(({ name }) => quotedText(name));
  return files.length > most
    ? phrase`${names.join(', ')} and ${files.length - most} more`
    : names.join(', ');
};

/**
 * The site that a PDF was made from, out of the site file that it carries; any bytes give an answer. Files are
 * known by their names: a site file ends in `.site.json`.
 */
export const siteInPdf = async (bytes: Uint8Array): Promise<InPdf> => {
  if (!holdsWord(bytes, signs.file)) return { is: 'nothing' };
  // what takes a PDF apart is large, and most carry no file
  const { filesInPdf } = await import('./filesInPdf.ts');
  const files = await filesInPdf(bytes);
  if (!files.ok) {
    const isOurs = holdsWord(bytes, signs.json) && !holdsWord(bytes, signs.password);
    return isOurs ? { is: 'site', site: files } : { is: 'nothing' };
  }
  if (files.value.length === 0) return { is: 'nothing' };
  const [site, ...more] = files.value.filter(isSiteFile);
  if (site === undefined) {
    const why = phrase`no site file is in it, but ${listed(files.value)}: expected one that ends in ${siteEnding}`;
    return { is: 'foreign', why };
  }
  if (more.length === 0) return { is: 'site', site: await opened(site) };
  const several = phrase`${more.length + 1} site files are in it, ${listed([site, ...more])}: expected one`;
  return { is: 'site', site: unread(several) };
};
