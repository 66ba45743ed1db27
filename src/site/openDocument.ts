import { read, unread } from '../units/parsed.ts';
import type { Parsed } from '../units/parsed.ts';
import { excess } from './excess.ts';
import { isPlain } from './isPlain.ts';
import { issueLine } from './issueLine.ts';
import { quoted } from './quoted.ts';
import { brokenReference } from './references.ts';
import { siteSchema } from './site.ts';
import type { Site } from './site.ts';
import { upgraded } from './upgraded.ts';
import { phrase } from '../phrases/phrase.ts';

const format = 'lathline site';

/**
 * Opens a site from a value read from elsewhere: checked, brought to today's version, every
 * reference followed. Unread with one line (where, what was expected, the value); never throws.
 */
export const openDocument = (value: unknown): Parsed<Site> => {
  const found = isPlain(value) ? value['format'] : value;
  if (!isPlain(value) || found !== format) {
    return unread(
      phrase`this is not a site file: expected format ${quoted(format)}, found ${quoted(found)}`,
    );
  }
  const tooMuch = excess(value);
  if (tooMuch !== null) return unread(tooMuch);
  const present = upgraded(value);
  if (!present.ok) return present;
  const checked = siteSchema.safeParse(present.value);
  if (!checked.success) return unread(issueLine(checked.error, present.value, []));
  const broken = brokenReference(checked.data);
  return broken === null ? read(checked.data) : unread(broken);
};
