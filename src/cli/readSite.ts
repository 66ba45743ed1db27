import { unread, type Parsed } from '../units/parsed.ts';
import { openSite } from '../site/openSite.ts';
import type { Site } from '../site/site.ts';
import type { Io } from './io.ts';

/** Opens the site that a path names; a refusal names the path, then what is wrong in the file. */
export const readSite = async (io: Io, path: string): Promise<Parsed<Site>> => {
  const text = await io.readText(path);
  if (!text.ok) return text;
  const site = openSite(text.value);
  return site.ok ? site : unread(`${path === '-' ? 'standard input' : path}: ${site.reason}`);
};
