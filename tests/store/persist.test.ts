import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualCounting } from '../../src/site/counting.ts';
import { addMark } from '../../src/site/edits/addMark.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import { inches } from '../../src/units/inches.ts';
import { bytesOf } from '../../src/store/change.ts';
import { deviceJobShelf } from '../../src/store/deviceJobShelf.ts';
import { loadKept } from '../../src/store/loadKept.ts';
import { randomSite } from '../engine/randomSite.ts';
import { historyOf, openDesk } from './keptDesk.ts';
import { memoryShelf, named, noPictures } from './memoryShelf.ts';
import { namedSite } from './namedSite.ts';

const sitePoint = (x: number, y: number): SitePoint => ({ x, y });

const tick = () => new Promise((resolve) => setTimeout(resolve));

const step = fc.oneof(
  { weight: 4, arbitrary: randomSite.map((site) => ({ do: 'commit', site }) as const) },
  { weight: 1, arbitrary: randomSite.map((site) => ({ do: 'load', site }) as const) },
  { weight: 3, arbitrary: fc.constant({ do: 'undo' } as const) },
  { weight: 2, arbitrary: fc.constant({ do: 'redo' } as const) },
  { weight: 1, arbitrary: fc.constant({ do: 'again' } as const) },
);

describe('keeping jobs with their history', () => {
  it('[H42] whatever was done, a program that starts anew has the same present, past and future', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 14 }), async (steps) => {
        const { shelf } = memoryShelf();
        let desk = await openDesk({ shelf, first: namedSite('first') });
        for (const [n, one] of steps.entries()) {
          const { commit, load, undo, redo } = desk.site.getState();
          if (one.do === 'commit') commit(one.site, `Edit ${n}`);
          else if (one.do === 'load') load(one.site, `Open ${n}`);
          else if (one.do === 'undo') undo();
          else if (one.do === 'redo') redo();
          else {
            await desk.keeper.now();
            desk = await openDesk({ shelf });
          }
        }
        await desk.keeper.now();
        const later = await openDesk({ shelf });
        expect(later.kept.trouble).toBeNull();
        expect(historyOf(later.site)).toEqual(historyOf(desk.site));
        expect(later.site.getState().pad.job).toBe(desk.site.getState().pad.job);
      }),
      { numRuns: 40 },
    );
  });

  it('[H42] after a reload undo goes back through all of the history, and on to the job below', async () => {
    const { shelf } = memoryShelf();
    const desk = await openDesk({ shelf, first: namedSite('own') });
    desk.site.getState().commit(namedSite('own 2'), 'Edit own');
    desk.site.getState().load(namedSite('file'), 'Open file');
    for (let n = 1; n <= 20; n += 1) desk.site.getState().commit(namedSite(`file ${n}`), 'Edit');
    await desk.keeper.now();
    const { site, keeper } = await openDesk({ shelf });
    const name = () => site.getState().history.present.site.job.name;
    for (let n = 19; n >= 1; n -= 1) {
      site.getState().undo();
      expect(name()).toBe(`file ${n}`);
    }
    site.getState().undo();
    expect(name()).toBe('file');
    site.getState().undo();
    expect(name()).toBe('own 2');
    site.getState().undo();
    expect(name()).toBe('own');
    site.getState().redo();
    await keeper.now();
    const last = await openDesk({ shelf });
    expect(last.site.getState().history.present.site.job.name).toBe('own 2');
  });

  it('[H43] a commit writes its change and not the document; an undo writes neither', async () => {
    const { shelf, writes } = memoryShelf();
    let yard = namedSite('yard');
    for (let n = 0; n < 300; n += 1) yard = addMark(yard, sitePoint(n, 2 * n));
    const { site, keeper } = await openDesk({ shelf, first: yard });
    const { commit, undo, redo } = site.getState();
    commit(addMark(site.getState().history.present.site, sitePoint(7, 7)), 'Add mark');
    await keeper.now();
    const [first] = writes.splice(0);
    expect(first?.document).not.toBeNull();
    for (let n = 0; n < 100; n += 1) {
      commit(addMark(site.getState().history.present.site, sitePoint(n, -n)), 'Add mark');
    }
    undo();
    redo();
    await keeper.now();
    const sizes = writes.map((write) => bytesOf({ ...write, steps: [...write.steps] }));
    expect(sizes).toHaveLength(102);
    expect(Math.max(...sizes)).toBeLessThan(bytesOf(yard) / 20);
    expect(writes.slice(-2).map((write) => write.steps.size)).toEqual([0, 0]);
  });

  it('[H43] the whole document is written again before the steps since it are longer than it', async () => {
    const { shelf, writes, lying } = memoryShelf();
    const { site, keeper } = await openDesk({ shelf, first: namedSite('yard') });
    for (let n = 0; n < 300; n += 1) {
      const remark = `${n} ${'x'.repeat(1000)}`;
      const { present } = site.getState().history;
      site.getState().commit({ ...present.site, job: { ...present.site.job, remark } }, 'Remark');
    }
    await keeper.now();
    const whole = writes.filter(({ document }) => document !== null).length;
    expect(whole).toBeGreaterThan(5);
    expect(whole).toBeLessThan(15);
    const [head] = lying().heads.values();
    expect(head?.writes).toBe(300);
    expect(historyOf((await openDesk({ shelf })).site)).toEqual(historyOf(site));
  });

  it('[H7] writes at every commit by itself, never a draft, and the session where it is another', async () => {
    const { shelf, writes, lying } = memoryShelf();
    const { site, session, keeper } = await openDesk({ shelf, first: namedSite('first') });
    const prices = { name: 'prices.csv', text: 'Item,Unit,Price' };
    const counting = { ...usualCounting, kerf: inches(0), times: { 'hog-ring': 2 } };
    const view = { scale: 2, x: 3, y: 4 };
    session.setState({ view });
    site.getState().preview(namedSite('draft'));
    await tick();
    expect(writes).toHaveLength(0);
    for (let n = 0; n < 50; n += 1) site.getState().commit(namedSite(`${n}`), 'Edit');
    await tick();
    expect(writes).toHaveLength(50);
    expect(writes.map(({ desk }) => Object.keys(desk).length > 0)).toEqual([
      true,
      ...Array.from({ length: 49 }, () => false),
    ]);
    session.setState({ view: { scale: 3, x: 3, y: 4 }, theme: 'sun', screen: 'load' });
    session.setState({ prices, counting });
    await keeper.now();
    expect(lying().desk.get('session')).toMatchObject({ view: { scale: 3 }, theme: 'sun' });
    const later = await openDesk({ shelf });
    expect(later.site.getState().history.present.site.job.name).toBe('49');
    expect(later.session.getState()).toMatchObject({ prices, counting, screen: 'load' });
  });

  it('[H44] what the screen was told to be kept is there, wherever writing stopped', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 12 }), fc.nat(8), async (count, turns) => {
        const { shelf, fail } = memoryShelf();
        const { site, keeper } = await openDesk({ shelf, first: namedSite('0') });
        for (let n = 1; n <= count; n += 1) site.getState().commit(namedSite(`${n}`), `Edit ${n}`);
        for (let n = 0; n < turns; n += 1) await Promise.resolve();
        const kept = keeper.state.getState().there?.at ?? 0;
        fail(new Error('the power went'));
        await tick();
        fail(null);
        const later = await loadKept({ shelf, bytes: noPictures });
        const at = later.job?.ledger.trail.at ?? 0;
        expect(at).toBeGreaterThanOrEqual(kept);
        expect(later.job?.again.present.drawn.job.name ?? '0').toBe(`${at}`);
        expect(later.job?.again.past.map(({ drawn }) => drawn().job.name) ?? []).toEqual(
          Array.from({ length: at }, (_, n) => `${n}`),
        );
      }),
    );
  });

  it('[H44] steps that are not whole are left out with what lies beyond them', async () => {
    const { shelf, lying } = memoryShelf();
    const { site, keeper } = await openDesk({ shelf, first: namedSite('0') });
    for (let n = 1; n <= 9; n += 1) site.getState().commit(namedSite(`${n}`), `Edit ${n}`);
    await keeper.now();
    const [id] = lying().heads.keys();
    if (id === undefined) throw new Error('no job was kept');
    const { base } = lying().heads.get(id) ?? {};
    expect(base).toBe(1);
    lying().steps.get(id)?.delete(6);
    const { site: later } = await openDesk({ shelf });
    expect(later.getState().history.present.site.job.name).toBe('5');
    expect(later.getState().history.past.map(({ label }) => label)).toHaveLength(5);
    later.getState().commit(namedSite('other'), 'Edit');
    await tick();
    expect((await openDesk({ shelf })).site.getState().history.present.site.job.name).toBe('other');
  });

  it('[H45] a history that is too long lets its oldest go, and says so', async () => {
    const { shelf } = memoryShelf();
    const { site, keeper } = await openDesk({ shelf, first: namedSite('0'), most: 2000 });
    for (let n = 1; n <= 60; n += 1) site.getState().commit(namedSite(`${n}`), `Edit ${n}`);
    await keeper.now();
    const { past } = site.getState().history;
    expect(past.length).toBeGreaterThan(10);
    expect(past.length).toBeLessThan(60);
    expect(keeper.state.getState().trouble).toMatchObject({
      kind: 'let go',
      line: expect.stringMatching(/^The oldest \d+ steps of this job can no longer be undone/),
    });
    expect(historyOf((await openDesk({ shelf })).site)).toEqual(historyOf(site));
  });

  it('[H8] says once in one line that it cannot keep, and keeps all once it can again', async () => {
    const { shelf, fail } = memoryShelf();
    const { site, keeper } = await openDesk({ shelf, first: namedSite('first') });
    site.getState().commit(namedSite('1'), 'Edit');
    await keeper.now();
    fail(named('QuotaExceededError'));
    site.getState().commit(namedSite('2'), 'Edit');
    await keeper.now();
    expect(keeper.state.getState()).toMatchObject({ all: false, trouble: { kind: 'full' } });
    keeper.hush();
    site.getState().commit(namedSite('3'), 'Edit');
    await keeper.now();
    expect(keeper.state.getState()).toMatchObject({ all: false, trouble: null });
    fail(null);
    site.getState().commit(namedSite('4'), 'Edit');
    await keeper.now();
    expect(keeper.state.getState()).toMatchObject({ all: true, trouble: null });
    expect(historyOf((await openDesk({ shelf })).site)).toEqual(historyOf(site));
  });

  it('[H46] what is taken away under the program is written again, and said', async () => {
    const { shelf, wipe } = memoryShelf();
    const { site, keeper } = await openDesk({ shelf, first: namedSite('first') });
    site.getState().commit(namedSite('1'), 'Edit');
    await keeper.now();
    wipe();
    await tick();
    expect(historyOf((await openDesk({ shelf })).site)).toEqual(historyOf(site));
    site.getState().commit(namedSite('2'), 'Edit');
    await tick();
    await keeper.now();
    expect(keeper.state.getState().trouble?.kind).toBe('emptied');
    expect(historyOf((await openDesk({ shelf })).site)).toEqual(historyOf(site));
  });

  it('[H47] over what another window wrote and nobody can read nothing is written: a job of its own goes on', async () => {
    const { shelf, lying } = memoryShelf();
    const one = await openDesk({ shelf, first: namedSite('first') });
    one.site.getState().commit(namedSite('1'), 'Edit');
    await one.keeper.now();
    const other = await openDesk({ shelf });
    other.site.getState().commit(namedSite('other'), 'Edit other');
    await other.keeper.now();
    lying().documents.set(one.site.getState().pad.job, { format: 'of a later program' });
    one.site.getState().commit(namedSite('2'), 'Edit');
    one.site.getState().commit(namedSite('3'), 'Edit');
    await tick();
    await one.keeper.now();
    expect(one.keeper.state.getState().trouble?.kind).toBe('other window');
    expect([...lying().heads.values()].map(({ name }) => name).toSorted()).toEqual(['3', 'other']);
    expect(one.told.at(-1)?.id).not.toBe(other.site.getState().pad.job);
    expect(one.told.at(-1)?.id).toBe(one.site.getState().pad.job);
    expect(historyOf((await openDesk({ shelf })).site)).toEqual(historyOf(one.site));
  });

  it('[H48] a new yard that nobody drew in leaves the shelf when another job comes onto the pad', async () => {
    const { shelf, lying } = memoryShelf();
    const { site, keeper } = await openDesk({ shelf, first: namedSite('own') });
    site.getState().commit(namedSite('own 2'), 'Edit');
    site.getState().load(namedSite(''), 'New yard');
    await keeper.now();
    expect(lying().heads.size).toBe(2);
    site.getState().load(namedSite('file'), 'Open file');
    await keeper.now();
    expect([...lying().heads.values()].map(({ name }) => name)).toEqual(['own 2', 'file']);
    site.getState().undo();
    await keeper.now();
    expect((await openDesk({ shelf })).site.getState().history.present.site.job.name).toBe('');
  });
});

describe('an empty pad', () => {
  it('[H48] a pad on which nothing was done is no job, whatever is looked at', async () => {
    const { shelf, lying } = memoryShelf();
    const { keeper, site } = await openDesk({ shelf });
    await keeper.now();
    expect(lying().heads.size).toBe(0);
    site.getState().commit(namedSite('a'), 'Edit');
    await keeper.now();
    expect(lying().heads.size).toBe(1);
  });
});

describe('reading what was kept', () => {
  it('[H36] gives the counting for new sites back, a number unknown then as the trade has it, else none', async () => {
    const { shelf } = memoryShelf();
    const read = async (counting: unknown) => {
      await shelf.writeDesk({ session: { theme: 'sun', counting } });
      const { session } = await loadKept({ shelf, bytes: noPictures });
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

  it('[H8] says in one line what it cannot read, and starts without it', async () => {
    const { shelf, fail, lying } = memoryShelf();
    const nothing = { job: null, under: null, session: {}, trouble: null };
    expect(await loadKept({ shelf, bytes: noPictures })).toEqual(nothing);
    fail(new Error('the disk\nis full'));
    expect(await loadKept({ shelf, bytes: noPictures })).toEqual({
      ...nothing,
      trouble: 'Nothing could be read from this device: the disk is full',
    });
    fail(null);
    const desk = await openDesk({ shelf, first: namedSite('first') });
    desk.site.getState().commit(namedSite('1'), 'Edit');
    await desk.keeper.now();
    const [id] = lying().heads.keys();
    if (id === undefined) throw new Error('no job was kept');
    lying().documents.set(id, { format: 'other' });
    await shelf.writeDesk({ session: { screen: 'attic', theme: 'dark' } });
    expect(await loadKept({ shelf, bytes: noPictures })).toEqual({
      ...nothing,
      session: { theme: 'dark' },
      trouble:
        'The job kept on this device cannot be opened: this is not a site file: ' +
        'expected format "lathline site", found "other"',
    });
    // it stays where it is
    expect(lying().heads.size).toBe(1);
  });

  it('[H50] starts with the job that was worked on last where that of the pad is not there', async () => {
    const { shelf, lying } = memoryShelf();
    const desk = await openDesk({ shelf, first: namedSite('a') });
    desk.site.getState().commit(namedSite('a 2'), 'Edit');
    desk.site.getState().load(namedSite('b'), 'Open b');
    await desk.keeper.now();
    const start = async () => (await loadKept({ shelf, bytes: noPictures })).job?.ledger.head.name;
    expect(await start()).toBe('b');
    const pad = desk.site.getState().pad.job;
    for (const other of [undefined, 7, 'job:0000000000000000']) {
      lying().desk.set('pad', other);
      expect(await start()).toBe('b');
    }
    const head = lying().heads.get(pad);
    if (head === undefined) throw new Error('no job was kept');
    lying().heads.set(pad, { ...head, binned: 70 });
    expect(await start()).toBe('a 2');
  });

  it('[H50] reads again what a browser that is still letting go refused, and nothing else', async () => {
    const { shelf } = memoryShelf();
    const refusing = (name: string, times: number) => {
      let left = times;
      const readDesk: typeof shelf.readDesk = async (key) => {
        if (left === 0) return shelf.readDesk(key);
        left -= 1;
        throw named(name);
      };
      return loadKept({ shelf: { ...shelf, readDesk }, bytes: noPictures }, [0, 0]);
    };
    expect((await refusing('UnknownError', 2)).trouble).toBeNull();
    expect((await refusing('UnknownError', 3)).trouble).not.toBeNull();
    expect((await refusing('SecurityError', 1)).trouble).not.toBeNull();
  });

  it('[H8] a device without a database is a trouble told, not thrown', async () => {
    const { job, trouble } = await loadKept({ shelf: deviceJobShelf(), bytes: noPictures });
    expect(job).toBeNull();
    expect(trouble).toMatch(/^Nothing could be read from this device: .*indexedDB.*$/);
  });

  it('[H8] a kept view that is no view is left out', async () => {
    const { shelf } = memoryShelf();
    for (const view of [{ scale: 0, x: 0, y: 0 }, { scale: 1, x: Number.NaN, y: 0 }, 7, null]) {
      await shelf.writeDesk({ session: { view, screen: 'yard' } });
      const { session } = await loadKept({ shelf, bytes: noPictures });
      expect(session).toEqual({ screen: 'yard' });
    }
  });
});
