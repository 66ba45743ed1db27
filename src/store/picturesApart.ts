import type { PictureId } from '../site/ids.ts';
import { isPlain } from '../site/isPlain.ts';
import type { Picture } from '../site/picture.ts';
import type { Site } from '../site/site.ts';
import type { KeptDocument } from './change.ts';
import { blobOf, pictureOf } from './pictureBytes.ts';
import type { PictureShelf } from './pictureShelf.ts';

type Pictures = Readonly<Record<PictureId, Picture>>;

const entriesOf = (pictures: Pictures) => Object.entries(pictures) as [PictureId, Picture][];

const places = new WeakMap<Pictures, Readonly<Record<string, null>>>();

/** A document as the device keeps it: of the pictures in its file it says which, their bytes lie apart. */
export const withoutBytes = (site: Site): KeptDocument => {
  const known = places.get(site.pictures);
  const pictures =
    known ?? Object.fromEntries(Object.keys(site.pictures).map((id) => [id, null] as const));
  places.set(site.pictures, pictures);
  return { ...site, pictures };
};

/** A kept document with the bytes of its pictures; one whose bytes are nowhere is no longer in its file. */
export const withBytes = (document: KeptDocument, found: Pictures): KeptDocument => {
  const { pictures } = document;
  if (!isPlain(pictures)) return document;
  const here = entriesOf(found).filter(([id]) => Object.hasOwn(pictures, id));
  return { ...document, pictures: Object.fromEntries(here) };
};

/** The bytes of pictures on the device, each written once. */
export interface PictureBytes {
  /** Those of these that can still be had. */
  readonly read: (ids: readonly PictureId[]) => Promise<Pictures>;
  /** Whether all pictures in a site's file are on the device. */
  readonly has: (site: Site) => boolean;
  /** Writes those that are not. Rejects where there is no room. */
  readonly write: (site: Site) => Promise<void>;
}

/** The bytes of pictures on a shelf of them. */
export const pictureBytes = (shelf: PictureShelf): PictureBytes => {
  const shelved = new Map<PictureId, string>();
  const missing = (site: Site) =>
    entriesOf(site.pictures).filter(([id, { data }]) => shelved.get(id) !== data);
  return {
    read: async (ids) => {
      const found: Record<PictureId, Picture> = {};
      for (const id of ids) {
        const blob = await shelf.read(id);
        const picture = blob === null ? null : await pictureOf(blob);
        if (picture === null) continue;
        found[id] = picture;
        shelved.set(id, picture.data);
      }
      return found;
    },
    has: (site) => missing(site).length === 0,
    write: async (site) => {
      for (const [id, picture] of missing(site)) {
        await shelf.write(id, await blobOf(picture));
        shelved.set(id, picture.data);
      }
    },
  };
};
