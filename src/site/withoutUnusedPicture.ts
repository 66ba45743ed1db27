import type { PictureId } from './ids.ts';
import type { Site } from './site.ts';
import type { Underlay } from './underlay.ts';
import { withoutEntries } from './withEntries.ts';

/** A site without the bytes of a picture that no underlay shows; the same site while one does. */
export const withoutUnusedPicture = (site: Site, id: PictureId): Site =>
  Object.values<Underlay>(site.underlays).some(({ picture }) => picture === id)
    ? site
    : withoutEntries(site, 'pictures', [id]);
