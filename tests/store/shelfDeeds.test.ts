import { describe, expect, it } from 'vitest';
import type { JobId } from '../../src/store/jobId.ts';
import { presentOf, readJob } from '../../src/store/loadKept.ts';
import { binJob, duplicateJob, renameJob } from '../../src/store/shelfDeeds.ts';
import { historyOf, openDesk } from './keptDesk.ts';
import { memoryShelf, noPictures } from './memoryShelf.ts';
import { namedSite } from './namedSite.ts';

const withTwo = async () => {
  const { shelf, lying } = memoryShelf();
  const desk = await openDesk({ shelf, first: namedSite('a') });
  desk.site.getState().commit(namedSite('a 2'), 'Edit a');
  const below = desk.site.getState().pad.job;
  desk.site.getState().load(namedSite('b'), 'Open b');
  await desk.keeper.now();
  const at = { shelf, bytes: noPictures, now: 70 };
  const namesOf = async (id: JobId) => {
    const job = await readJob(at, id);
    const { past = [], present } = job?.again ?? {};
    return [...past.map(({ drawn }) => drawn()), present?.drawn].map((site) => site?.job.name);
  };
  return { desk, below, at, namesOf, lying };
};

describe('jobs in the list', () => {
  it('[H49] a job is renamed by a step of its own, and a copy has its history', async () => {
    const { below, at, namesOf, lying } = await withTwo();
    await renameJob(at, below, 'c');
    expect(await namesOf(below)).toEqual(['a', 'a 2', 'c']);
    const copy = await duplicateJob(at, below, 'c, copy');
    expect(await namesOf(copy)).toEqual(['a', 'a 2', 'c', 'c, copy']);
    await renameJob(at, copy, 'd');
    expect(await namesOf(below)).toEqual(['a', 'a 2', 'c']);
    expect((await presentOf(at.shelf, copy))?.['job']).toMatchObject({ name: 'd' });
    expect([...lying().heads.values()].map(({ name }) => name)).toEqual(['c', 'b', 'd']);
    await expect(renameJob(at, 'job:0000000000000000', 'e')).rejects.toThrow('no longer');
  });

  it('[H49] undo does not lead to a job in the bin, and does again once it is out', async () => {
    const { desk, below, at, lying } = await withTwo();
    desk.keeper.forget(below);
    await binJob(at, below, 70);
    expect(lying().heads.get(below)?.binned).toBe(70);
    expect(desk.site.getState().pad.under).toBeNull();
    expect((await openDesk({ shelf: at.shelf })).site.getState().pad.under).toBeNull();
    await binJob(at, below, null);
    const { site } = await openDesk({ shelf: at.shelf });
    expect(site.getState().pad.under?.job).toBe(below);
    site.getState().undo();
    expect(historyOf(site).map((part) => part.map(({ label }) => label))).toEqual([
      ['New site'],
      ['Edit a'],
      [],
    ]);
  });
});
