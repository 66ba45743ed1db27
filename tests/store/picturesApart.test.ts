import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addUnderlay } from '../../src/site/edits/addUnderlay.ts';
import { changeUnderlay } from '../../src/site/edits/changeUnderlay.ts';
import { keepUnderlay } from '../../src/site/edits/keepUnderlay.ts';
import type { Site } from '../../src/site/site.ts';
import { keep, loadKept, type Shelf } from '../../src/store/persist.ts';
import { blobOf, pictureOf } from '../../src/store/pictureBytes.ts';
import { picturesApart } from '../../src/store/picturesApart.ts';
import { devicePictureShelf, tooMany, type PictureShelf } from '../../src/store/pictureShelf.ts';
import { createSession } from '../../src/store/session.ts';
import { createSiteStore } from '../../src/store/siteStore.ts';
import { namedSite } from './namedSite.ts';
import { samplePlans } from './samplePlans.ts';

const picture = `picture:${'0c'.repeat(32)}` as const;
const bytes = { type: 'image/png', data: 'iVBORw0KGgo=' } as const;
const site = keepUnderlay(
  addUnderlay(namedSite('Yard'), {
    label: 'Plat',
    picture,
    file: 'plat.png',
    width: 40,
    height: 30,
    ties: [
      { u: 0, v: 0, x: 0, y: 30 },
      { u: 40, v: 30, x: 40, y: 0 },
    ],
  }),
  'underlay:1',
  bytes,
);

/** A desk and a picture shelf in memory; what is written is copied as a database would copy it. */
const memory = () => {
  const values = new Map<string, unknown>();
  const blobs = new Map<string, Blob>();
  const written: string[] = [];
  const desk: Shelf = {
    read: (key) => Promise.resolve(values.get(key)),
    write: async (next) => {
      await Promise.resolve();
      for (const [key, value] of Object.entries(next)) values.set(key, structuredClone(value));
    },
  };
  const pictures: PictureShelf = {
    read: (id) => Promise.resolve(blobs.get(id) ?? null),
    write: async (id, blob) => {
      await Promise.resolve();
      written.push(id);
      blobs.set(id, blob);
    },
    prune: () => Promise.resolve(),
  };
  return { desk, pictures, values, blobs, written };
};

describe('pictures beside the desk', () => {
  it('[H16] the bytes of a picture in the file are written once, the site without them at every commit', async () => {
    const { desk, pictures, values, written } = memory();
    const shelf = picturesApart(desk, pictures);
    const store = { site: createSiteStore(namedSite('old')), session: createSession(samplePlans) };
    const keeper = keep({ shelf, ...store });
    store.site.getState().load(site, 'Open');
    await keeper.now();
    for (const shows of [0.9, 0.8, 0.7]) {
      const faded = changeUnderlay(store.site.getState().history.present.site, 'underlay:1', {
        shows,
      });
      store.site.getState().commit(faded, 'Fade');
      await keeper.now();
    }
    expect(written).toEqual([picture]);
    expect((values.get('site') as Site).pictures).toEqual({});
    expect((await loadKept(shelf)).site).toEqual(
      changeUnderlay(site, 'underlay:1', { shows: 0.7 }),
    );
    // a program that starts anew knows that it is there
    const later = picturesApart(desk, pictures);
    const { site: opened } = await loadKept(later);
    await later.write({ site: opened });
    expect(written).toEqual([picture]);
  });

  it('[H16] a desk without pictures, or of a time before them, is read as it is', async () => {
    const { desk, pictures, values } = memory();
    const shelf = picturesApart(desk, pictures);
    values.set('site', namedSite('plain'));
    expect((await loadKept(shelf)).site).toEqual(namedSite('plain'));
    expect((await loadKept(picturesApart(memory().desk, pictures))).site).toBeNull();
    await shelf.write({ session: { theme: 'sun' } });
    expect(values.get('session')).toEqual({ theme: 'sun' });
  });

  it('[H16] where there is no room for pictures the drawing is kept all the same, and one line says so', async () => {
    const { desk, values, pictures, blobs } = memory();
    const full = { ...pictures, write: () => Promise.reject(new Error('quota')) };
    const store = { site: createSiteStore(site), session: createSession(samplePlans) };
    await keep({ shelf: picturesApart(desk, full), ...store }).now();
    expect(store.session.getState().say).toBe(
      'This drawing is not being kept on the device: there is no room for the pictures under it; all else is kept',
    );
    expect((values.get('site') as Site).underlays).toEqual(site.underlays);
    // the picture is then one that is asked for again
    expect(blobs.size).toBe(0);
    expect((await loadKept(picturesApart(desk, pictures))).site).toEqual({ ...site, pictures: {} });
  });

  it('[H16] any bytes come back as they were', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ minLength: 1, maxLength: 60_000 }), async (data) => {
        const blob = new Blob([new Uint8Array(data)], { type: 'image/webp' });
        const kept = await pictureOf(blob);
        // node's own base64
        expect(kept).toEqual({ type: 'image/webp', data: Buffer.from(data).toString('base64') });
        if (kept === null) return;
        const back = await blobOf(kept);
        expect(back.type).toBe('image/webp');
        expect(new Uint8Array(await back.arrayBuffer())).toEqual(new Uint8Array(data));
      }),
      { numRuns: 30 },
    );
    expect(await pictureOf(new Blob(['x'], { type: 'image/gif' }))).toBeNull();
  });

  it('[H17] of the pictures on the device the longest unwanted go, never those of the drawing', () => {
    const shelved = new Map([
      ['a', { bytes: 100, wanted: 3 }],
      ['b', { bytes: 100, wanted: 1 }],
      ['c', { bytes: 100, wanted: 2 }],
    ]);
    expect(tooMany(shelved, 300, new Set())).toEqual([]);
    expect(tooMany(shelved, 299, new Set())).toEqual(['b']);
    expect(tooMany(shelved, 150, new Set())).toEqual(['b', 'c']);
    expect(tooMany(shelved, 150, new Set(['b']))).toEqual(['c', 'a']);
    expect(tooMany(shelved, 0, new Set(['a', 'b', 'c']))).toEqual([]);
  });

  it('[H8] a device without a database is told by its failure', async () => {
    await expect(devicePictureShelf().read(picture)).rejects.toThrow();
  });
});
