import { describe, expect, it } from 'vitest';
import { usualCounting } from '../../src/site/counting.ts';
import { inches } from '../../src/units/inches.ts';
import { deviceShelf, keep, loadKept } from '../../src/store/persist.ts';
import type { Shelf } from '../../src/store/persist.ts';
import { createSession } from '../../src/store/session.ts';
import { createSiteStore } from '../../src/store/siteStore.ts';
import { namedSite } from './namedSite.ts';
import { samplePlans } from './samplePlans.ts';

/** A shelf in memory that counts its writes; values are copied as a database would copy them. */
const memory = () => {
  const values = new Map<string, unknown>();
  let writes = 0;
  const shelf: Shelf = {
    read: (key) => Promise.resolve(values.get(key)),
    write: async (next) => {
      await Promise.resolve();
      writes += 1;
      for (const [key, value] of Object.entries(next)) values.set(key, structuredClone(value));
    },
  };
  return { shelf, values, writes: () => writes };
};

const broken: Shelf = {
  read: () => Promise.reject(new Error('the disk\nis full')),
  write: () => Promise.reject(new Error('the disk\nis full')),
};

const desk = () => ({
  site: createSiteStore(namedSite('first')),
  session: createSession(samplePlans),
});

describe('persist', () => {
  it('[H7] keeps the present at every commit, undo and load, and gives it back', async () => {
    const { shelf } = memory();
    const { site, session } = desk();
    const keeper = keep({ shelf, site, session });
    const calls = { text: 'N 26 E 100', unit: 'chains', parts: 10_000 } as const;
    const prices = { name: 'prices.csv', text: 'Item,Unit,Price' };
    const counting = { ...usualCounting, kerf: inches(0), times: { 'hog-ring': 2 } };
    session.setState({
      view: { scale: 2, x: 3, y: 4 },
      theme: 'sun',
      screen: 'load',
      calls,
      prices,
      counting,
    });
    const names = async () => (await loadKept(shelf)).site?.job.name;
    site.getState().commit(namedSite('second'), 'Edit');
    await keeper.now();
    expect(await names()).toBe('second');
    site.getState().undo();
    await keeper.now();
    expect(await names()).toBe('first');
    site.getState().load(namedSite('other'), 'Open other');
    await keeper.now();
    expect(await names()).toBe('other');
    const { session: kept, trouble } = await loadKept(shelf);
    expect(trouble).toBeNull();
    expect(kept).toEqual({
      screen: 'load',
      theme: 'sun',
      view: { scale: 2, x: 3, y: 4 },
      sheet: { paper: 'usual', orientation: 'fitting', reader: 'all' },
      calls,
      prices,
      counting,
    });
  });

  it('[H36] gives the counting for new sites back, a number unknown then as the trade has it, else none', async () => {
    const { shelf, values } = memory();
    const read = async (counting: unknown) => {
      values.set('session', { theme: 'sun', counting });
      const { session } = await loadKept(shelf);
      // whatever it is, the rest is read
      expect(session.theme).toBe('sun');
      return session.counting;
    };
    const own = { ...usualCounting, railStick: inches(240), spares: { bolt: 0.1 } };
    expect(await read(own)).toEqual(own);
    const { lumber: _unknown, ...older } = own;
    expect(await read(older)).toEqual({ ...own, lumber: usualCounting.lumber });
    for (const other of [
      undefined,
      null,
      'soon',
      { ...own, railStick: 0 },
      { ...own, bag: 70 },
      { ...own, welds: 2 },
      { ...own, times: { bolt: 2000 } },
    ]) {
      expect(await read(other)).toBeUndefined();
    }
  });

  it('[H7] writes on commit by itself, never a draft, and leaves out what was overtaken', async () => {
    const { shelf, values, writes } = memory();
    const { site, session } = desk();
    keep({ shelf, site, session });
    site.getState().preview(namedSite('draft'));
    await new Promise((resolve) => setTimeout(resolve));
    expect(writes()).toBe(0);
    for (let n = 0; n < 50; n += 1) site.getState().commit(namedSite(`${n}`), 'Edit');
    await new Promise((resolve) => setTimeout(resolve));
    expect(values.get('site')).toEqual(namedSite('49'));
    expect(writes()).toBe(2);
  });

  it('[H8] says once in one line that it cannot keep, and never throws', async () => {
    const { site, session } = desk();
    const keeper = keep({ shelf: broken, site, session });
    site.getState().commit(namedSite('second'), 'Edit');
    await keeper.now();
    expect(session.getState().say).toBe(
      'This drawing is not being kept on the device: the disk is full',
    );
    session.setState({ say: '' });
    await keeper.now();
    expect(session.getState().say).toBe('');
  });

  it('[H8] says in one line what it cannot read, and starts without it', async () => {
    expect(await loadKept(broken)).toEqual({
      site: null,
      session: {},
      trouble: 'Nothing could be read from this device: the disk is full',
    });
    const { shelf } = memory();
    expect(await loadKept(shelf)).toEqual({ site: null, session: {}, trouble: null });
    await shelf.write({ site: { format: 'other' }, session: { screen: 'attic', theme: 'dark' } });
    expect(await loadKept(shelf)).toEqual({
      site: null,
      session: { theme: 'dark' },
      trouble:
        'The drawing kept on this device cannot be opened: this is not a site file: ' +
        'expected format "lathline site", found "other"',
    });
  });

  it('[H8] a device without a database is a trouble told, not thrown', async () => {
    const { site, trouble } = await loadKept(deviceShelf());
    expect(site).toBeNull();
    expect(trouble).toMatch(/^Nothing could be read from this device: .*indexedDB.*$/);
  });

  it('[H8] a kept view that is no view is left out', async () => {
    const { shelf } = memory();
    for (const view of [{ scale: 0, x: 0, y: 0 }, { scale: 1, x: Number.NaN, y: 0 }, 7, null]) {
      await shelf.write({ session: { view, screen: 'yard' } });
      expect((await loadKept(shelf)).session).toEqual({ screen: 'yard' });
    }
  });
});
