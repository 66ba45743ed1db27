import { read, unread, type Parsed } from '../units/parsed.ts';
import { surveyed } from '../engine/survey/surveyed.ts';
import { pictureKind } from '../importers/picture/pictureKind.ts';
import { openSite } from '../site/openSite.ts';
import type { Site } from '../site/site.ts';
import type { Io } from './io.ts';
import { textOf } from './textOf.ts';
import { phrase } from '../phrases/phrase.ts';

const fromPdf = async (bytes: Uint8Array): Promise<Parsed<Site>> => {
  const { siteInPdf } = await import('../importers/pdf/siteInPdf.ts');
  const found = await siteInPdf(bytes);
  if (found.is === 'site') return found.site;
  return unread(
    found.is === 'foreign'
      ? found.why
      : phrase`no site file is in this PDF: expected the crew sheet of a site`,
  );
};

/**
 * Opens the document that a path names, its marks where they were drawn: a site file, or a PDF that carries
 * one. A refusal names the path, then what is wrong in the file.
 */
export const readDocument = async (io: Io, path: string): Promise<Parsed<Site>> => {
  const bytes = await io.readBytes(path);
  if (!bytes.ok) return bytes;
  const where = path === '-' ? phrase`standard input` : path;
  if (pictureKind(bytes.value.subarray(0, 1100)) === 'application/pdf') {
    const site = await fromPdf(bytes.value);
    return site.ok ? site : unread(`${where}: ${site.reason}`);
  }
  const text = textOf(where, bytes.value);
  if (!text.ok) return text;
  const site = openSite(text.value);
  return site.ok ? site : unread(`${where}: ${site.reason}`);
};

/** Opens the site that a path names, its marks where what was observed puts them. */
export const readSite = async (io: Io, path: string): Promise<Parsed<Site>> => {
  const drawn = await readDocument(io, path);
  return drawn.ok ? read(surveyed(drawn.value, null).site) : drawn;
};
