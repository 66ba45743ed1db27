import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addUnderlay } from '../../src/site/edits/addUnderlay.ts';
import { changeUnderlay } from '../../src/site/edits/changeUnderlay.ts';
import { keepUnderlay } from '../../src/site/edits/keepUnderlay.ts';
import { blobOf, pictureOf } from '../../src/store/pictureBytes.ts';
import { pictureBytes } from '../../src/store/picturesApart.ts';
import { devicePictureShelf, tooMany, type PictureShelf } from '../../src/store/pictureShelf.ts';
import { historyOf, openDesk } from './keptDesk.ts';
import { memoryShelf } from './memoryShelf.ts';
import { namedSite } from './namedSite.ts';

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

/** A picture shelf in memory. */
const memory = () => {
  const blobs = new Map<string, Blob>();
  const written: string[] = [];
  const pictures: PictureShelf = {
    read: (id) => Promise.resolve(blobs.get(id) ?? null),
    write: async (id, blob) => {
      await Promise.resolve();
      written.push(id);
      blobs.set(id, blob);
    },
    prune: () => Promise.resolve(),
  };
  return { pictures, blobs, written };
};

describe('pictures beside the jobs', () => {
  it('[H16] the bytes of a picture in the file are written once, no document or step has them', async () => {
    const { pictures, written } = memory();
    const { shelf, lying, writes } = memoryShelf();
    const desk = await openDesk({ shelf, bytes: pictureBytes(pictures), first: namedSite('old') });
    desk.site.getState().load(site, 'Open');
    await desk.keeper.now();
    for (const shows of [0.9, 0.8, 0.7]) {
      const faded = changeUnderlay(desk.site.getState().history.present.site, 'underlay:1', {
        shows,
      });
      desk.site.getState().commit(faded, 'Fade');
      await desk.keeper.now();
    }
    expect(written).toEqual([picture]);
    expect(JSON.stringify([writes, [...lying().documents]])).not.toContain(bytes.data);
    expect([...lying().heads.values()].at(-1)?.wanted).toEqual([picture]);
    // a program that starts anew has it in all versions, and knows that it is there
    const later = await openDesk({ shelf, bytes: pictureBytes(pictures) });
    expect(historyOf(later.site)).toEqual(historyOf(desk.site));
    later.site.getState().commit(namedSite('other'), 'Edit');
    later.site.getState().undo();
    await later.keeper.now();
    expect(written).toEqual([picture]);
  });

  it('[H16] where there is no room for pictures the drawing is kept all the same, and one line says so', async () => {
    const { pictures, blobs } = memory();
    const { shelf } = memoryShelf();
    const full = { ...pictures, write: () => Promise.reject(new Error('quota')) };
    const { site: store, keeper } = await openDesk({ shelf, bytes: pictureBytes(full) });
    store.getState().load(site, 'Open');
    await keeper.now();
    expect(keeper.state.getState()).toMatchObject({
      all: true,
      trouble: {
        line: 'This device has no room for the pictures under the drawing; all else is kept. Save a file of it.',
      },
    });
    // the picture is then one that is asked for again
    expect(blobs.size).toBe(0);
    const later = await openDesk({ shelf, bytes: pictureBytes(pictures) });
    expect(later.site.getState().history.present.site).toEqual({ ...site, pictures: {} });
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
