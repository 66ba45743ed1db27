import { read, unread, type Parsed } from '../units/parsed.ts';
import { surveyed } from '../engine/survey/surveyed.ts';
import { openSite } from '../site/openSite.ts';
import type { Site } from '../site/site.ts';
import type { Io } from './io.ts';

/**
 * Opens the document that a path names, its marks where they were drawn; a refusal names the path,
 * then what is wrong in the file.
 */
export const readDocument = async (io: Io, path: string): Promise<Parsed<Site>> => {
  const text = await io.readText(path);
  if (!text.ok) return text;
  const site = openSite(text.value);
  return site.ok ? site : unread(`${path === '-' ? 'standard input' : path}: ${site.reason}`);
};

/** Opens the site that a path names, its marks where what was observed puts them. */
export const readSite = async (io: Io, path: string): Promise<Parsed<Site>> => {
  const drawn = await readDocument(io, path);
  return drawn.ok ? read(surveyed(drawn.value, null).site) : drawn;
};
