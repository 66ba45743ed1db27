import type { PictureId } from '../site/ids.ts';
import { isPlain } from '../site/isPlain.ts';
import type { Picture } from '../site/picture.ts';
import type { Site } from '../site/site.ts';
import type { Shelf } from './persist.ts';
import { blobOf, pictureOf } from './pictureBytes.ts';
import type { PictureShelf } from './pictureShelf.ts';

/** Under this key the desk says which pictures are in the file of its site. */
const inFile = 'pictures';

const entriesOf = ({ pictures }: Pick<Site, 'pictures'>) =>
  Object.entries(pictures) as [PictureId, Picture][];

/** Those of these pictures that can still be had. */
const foundOf = async (
  ids: readonly PictureId[],
  pictures: PictureShelf,
): Promise<Record<PictureId, Picture>> => {
  const found: Record<PictureId, Picture> = {};
  for (const id of ids) {
    const blob = await pictures.read(id);
    const picture = blob === null ? null : await pictureOf(blob);
    if (picture !== null) found[id] = picture;
  }
  return found;
};

/**
 * A desk on which pictures lie beside the site that has them in its file: their bytes are written once,
 * and not again with every commit. What cannot be written of them is told once all else is written.
 */
export const picturesApart = (desk: Shelf, pictures: PictureShelf): Shelf => {
  const shelved = new Map<PictureId, string>();
  const shelve = async (site: Site): Promise<void> => {
    for (const [id, picture] of entriesOf(site)) {
      if (shelved.get(id) === picture.data) continue;
      await pictures.write(id, await blobOf(picture));
      shelved.set(id, picture.data);
    }
  };
  return {
    read: async (key) => {
      const value = await desk.read(key);
      const ids = key === 'site' && isPlain(value) ? await desk.read(inFile) : null;
      if (!isPlain(value) || !Array.isArray(ids) || ids.length === 0) return value;
      const found = await foundOf(ids as PictureId[], pictures);
      for (const [id, { data }] of entriesOf({ pictures: found })) shelved.set(id, data);
      return { ...value, pictures: found };
    },
    write: async (values) => {
      const site = values['site'] as Site | undefined;
      if (site === undefined) return desk.write(values);
      let refused: unknown = null;
      try {
        await shelve(site);
      } catch (error) {
        refused = error ?? new Error('no reason given');
      }
      const ids = Object.keys(site.pictures);
      await desk.write({ ...values, site: { ...site, pictures: {} }, [inFile]: ids });
      if (refused !== null) {
        throw new Error('there is no room for the pictures under it; all else is kept');
      }
    },
  };
};
