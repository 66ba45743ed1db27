import { describe, expect, it } from 'vitest';
import type { PictureWorker } from '../../../src/screens/pictures/askWorker.ts';
import { firstTies } from '../../../src/screens/pictures/firstTies.ts';
import { createPictureBox } from '../../../src/screens/pictures/pictureBox.ts';
import { underPictures } from '../../../src/screens/pictures/underPictures.ts';
import { projected } from '../../../src/geometry/projective.ts';
import { straightPlan } from '../../../src/geometry/straightPlan.ts';
import { addUnderlay } from '../../../src/site/edits/addUnderlay.ts';
import { keepUnderlay } from '../../../src/site/edits/keepUnderlay.ts';
import { placeUnderlay } from '../../../src/site/edits/placeUnderlay.ts';
import { straightenUnderlay } from '../../../src/site/edits/straightenUnderlay.ts';
import { removeUnderlay } from '../../../src/site/edits/removeUnderlay.ts';
import { createSiteStore } from '../../../src/store/siteStore.ts';
import type { PictureShelf } from '../../../src/store/pictureShelf.ts';
import { read } from '../../../src/units/parsed.ts';
import { radians } from '../../../src/units/radians.ts';
import { namedSite } from '../../store/namedSite.ts';

const picture = `picture:${'0'.repeat(64)}` as const;
const id = 'underlay:1';
const laid = addUnderlay(namedSite('Yard'), {
  label: 'Plat',
  picture,
  file: 'plat.png',
  width: 400,
  height: 300,
  ties: [
    { u: 0, v: 0, x: 0, y: 300 },
    { u: 400, v: 300, x: 400, y: 0 },
  ],
});
const straight = straightenUnderlay(laid, id, [
  { u: 100, v: 50, x: 0, y: 480 },
  { u: 300, v: 60, x: 720, y: 480 },
  { u: 390, v: 280, x: 720, y: 0 },
  { u: 10, v: 270, x: 0, y: 0 },
]);
const bytes = new Blob(['pixels'], { type: 'image/png' });

/** A box over a shelf and a worker that hand out pictures of half the size, and count. */
const boxed = (first = laid, shelved: Blob | null = bytes) => {
  const shelf = new Map<string, Blob>(shelved === null ? [] : [[picture, shelved]]);
  const asked: string[] = [];
  const pictures: PictureShelf = {
    read: (one) => Promise.resolve(shelf.get(one) ?? null),
    write: async (one, blob) => {
      await Promise.resolve();
      shelf.set(one, blob);
    },
    prune: () => Promise.resolve(),
  };
  const worker: PictureWorker = {
    take: () => Promise.reject(new Error('nothing is brought here')),
    show: async (call) => {
      await Promise.resolve();
      asked.push(call.do);
      const plan = call.do === 'show' ? null : straightPlan(call.laid, call.longest);
      const bitmap = { width: plan?.width ?? 200, height: plan?.height ?? 150 } as ImageBitmap;
      return read({ bitmap, plan });
    },
  };
  const site = createSiteStore(first);
  const box = createPictureBox({ site, shelf: pictures, worker });
  const settled = () => new Promise((done) => setTimeout(done, 20));
  const is = () => box.shown.getState().get(id)?.shown.is;
  const painted = () => underPictures(site.getState().history.present.site, box.shown.getState());
  return { box, site, asked, shelf, settled, is, painted };
};

describe('the pictures at hand', () => {
  it('shows what is on the device where it lies, whatever size is kept of it', async () => {
    const { is, settled, painted, site, asked } = boxed();
    expect(painted()[0]).toMatchObject({ kind: 'frame', words: ['Plat', 'being read'] });
    await settled();
    expect(is()).toBe('here');
    const [one] = painted();
    if (one?.kind !== 'pixels') throw new Error('expected pixels');
    // the lower right corner of half as many pixels
    expect(projected(one.toGround, { x: 200, y: 150 })).toEqual({ x: 400, y: 0 });
    const present = site.getState().history.present.site;
    const turned = { about: { x: 0, y: 0 }, turn: radians(1), times: 2, by: { x: 5, y: 6 } };
    site.getState().commit(placeUnderlay(present, id, turned), 'Place');
    await settled();
    expect(asked).toEqual(['show']);
    site.getState().commit(removeUnderlay(present, id), 'Remove');
    await settled();
    expect(is()).toBeUndefined();
  });

  it('says of what is not on the device that it is to be brought again, and takes it when it is', async () => {
    const { box, is, settled, painted, shelf, asked } = boxed(laid, null);
    await settled();
    expect(is()).toBe('missing');
    expect(painted()[0]).toMatchObject({
      kind: 'frame',
      words: ['Plat', 'not on this device:', 'bring plat.png again'],
    });
    expect(await box.put(picture, bytes)).toBeNull();
    await settled();
    expect([is(), shelf.get(picture), asked]).toEqual(['here', bytes, ['show']]);
  });

  it('takes a picture out of the file where the file has it', async () => {
    const { is, settled, site } = boxed(laid, null);
    await settled();
    expect(is()).toBe('missing');
    const kept = keepUnderlay(laid, id, { type: 'image/png', data: 'iVBORw0KGgo=' });
    site.getState().load(kept, 'Open');
    await settled();
    expect(is()).toBe('here');
  });

  it('straightens once; what is moved as a whole afterwards is painted elsewhere, not made anew', async () => {
    const { settled, site, asked, painted } = boxed();
    await settled();
    site.getState().commit(straight, 'Straighten');
    await settled();
    expect(asked).toEqual(['show', 'straighten']);
    const here = painted()[0];
    const about = { x: 100, y: 100 };
    const turned = { about, turn: radians(0.7), times: 1.5, by: { x: 50, y: -60 } };
    const moved = placeUnderlay(site.getState().history.present.site, id, turned);
    site.getState().commit(moved, 'Place');
    await settled();
    expect(asked).toEqual(['show', 'straighten']);
    const there = painted()[0];
    if (here?.kind !== 'pixels' || there?.kind !== 'pixels') throw new Error('expected pixels');
    expect(there.bitmap).toBe(here.bitmap);
    const [a, b] = [here, there].map(({ toGround }) => {
      const [p, q] = [projected(toGround, { x: 0, y: 0 }), projected(toGround, { x: 90, y: 0 })];
      return Math.hypot(p.x - q.x, p.y - q.y);
    });
    expect((b ?? 0) / (a ?? 1)).toBeCloseTo(1.5, 6);
    // taken back to two points it is looked at as it was taken
    site.getState().undo();
    site.getState().undo();
    await settled();
    expect(asked).toEqual(['show', 'straighten', 'show']);
  });

  it('a picture that comes lies in the middle of what is seen, its upper edge to the north', () => {
    const view = { scale: 2, x: 500, y: 400 };
    const [first, second] = firstTies({ width: 400, height: 300 }, view, {
      width: 1000,
      height: 800,
    });
    // 700 px of the 1,000 that there are, at 2 px to the inch
    expect(first).toEqual({ u: 0, v: 0, x: -175, y: 131.25 });
    expect(second).toEqual({ u: 400, v: 300, x: 175, y: -131.25 });
    const [unseen] = firstTies({ width: 100, height: 100 }, view, null);
    expect(unseen.x).toBeCloseTo(-420, 9);
    expect(unseen.y).toBeCloseTo(420, 9);
  });
});
