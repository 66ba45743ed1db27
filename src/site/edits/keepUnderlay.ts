import { entry } from '../entry.ts';
import type { UnderlayId } from '../ids.ts';
import { limits } from '../limits.ts';
import type { Picture } from '../picture.ts';
import type { Site } from '../site.ts';
import { withEntry, withoutEntries } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Base64 characters as megabytes of the picture, rounded up to a tenth. */
const megabytes = (characters: number): string =>
  phrase`${(Math.ceil((characters * 30) / 4e6) / 10).toFixed(1)} MB`;

const tooLarge = (site: Site, picture: Picture, id: string): string | null => {
  const own = picture.data.length;
  if (own > limits.pictureText) {
    return phrase`at most ${megabytes(limits.pictureText)}, found ${megabytes(own)}`;
  }
  const others = Object.entries<Picture>(site.pictures).filter(([other]) => other !== id);
  const all = others.reduce((sum, [, { data }]) => sum + data.length, own);
  if (all <= limits.picturesText) return null;
  return phrase`at most ${megabytes(limits.picturesText)} of pictures, found ${megabytes(all)} with this one`;
};

/**
 * Keeps a picture in the file, which then needs nothing else, or with null beside it: then it is on the
 * device alone. It is the picture of every underlay that shows it. RangeError for an unknown underlay and
 * for a picture that is too large for the file, alone or with the others.
 */
export const keepUnderlay = (site: Site, id: UnderlayId, kept: Picture | null): Site => {
  const { picture } = entry(site, 'underlays', id);
  if (kept === null) return withoutEntries(site, 'pictures', [picture]);
  const fault = tooLarge(site, kept, picture);
  if (fault !== null) throw new RangeError(phrase`picture in the file: expected ${fault}`);
  return withEntry(site, 'pictures', picture, kept);
};
