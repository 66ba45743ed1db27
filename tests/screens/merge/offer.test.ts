import { describe, expect, it } from 'vitest';
import { asSaved } from '../../../src/screens/merge/copies.ts';
import { digestOf } from '../../../src/screens/merge/digestOf.ts';
import { offerOf } from '../../../src/screens/merge/offer.ts';
import { renameGate } from '../../../src/site/edits/renameGate.ts';
import { renameLine } from '../../../src/site/edits/renameLine.ts';
import { settled } from '../../../src/site/merge/merged.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { copiesTooMany, type CopyShelf } from '../../../src/store/copyShelf.ts';
import { sampleSite } from '../../site/sampleSite.ts';

/** A shelf in memory, or one of a device that keeps nothing. */
const memoryShelf = (works: 'works' | 'fails' = 'works'): CopyShelf => {
  const [copies, told] = [new Map<string, string>(), new Map<string, unknown>()];
  const once = <T>(deed: () => T): Promise<T> =>
    works === 'works' ? Promise.resolve(deed()) : Promise.reject(new Error('no room'));
  return {
    read: (digest) => once(() => copies.get(digest) ?? null),
    write: (digest, text) => once(() => void copies.set(digest, text)),
    lineageOf: (job) => once(() => told.get(job)),
    tell: (job, lineage) => once(() => void told.set(job, lineage)),
  };
};

const job = 'job:0123456789abcdef' as const;
/** A document that has the id of its job from birth. */
const born: Site = { ...sampleSite, lineage: { job: '5e'.repeat(16), saves: {} } };

const own = (document: Site) => ({ job, document });

/** A document as another device has it that opened the file. */
const sent = (site: Site): Site => {
  const opened = openSite(saveSite(site));
  if (!opened.ok) throw new Error(opened.reason);
  return opened.value;
};

describe('a copy that comes back', () => {
  it('is of the job on the pad where that was saved, and finds what both came from', async () => {
    const shelf = memoryShelf();
    const there = sent(await asSaved(shelf, own(sampleSite)));
    const theirs = sent(
      await asSaved(memoryShelf(), own(renameGate(there, 'gate:1', 'Truck gate'))),
    );
    const mine = renameLine(sampleSite, 'line:1', 'Rear');
    const offer = await offerOf(shelf, own(mine), { file: 'a.json', site: theirs });
    expect(offer?.is).toBe('apart');
    expect(offer?.merge.conflicts).toEqual([]);
    expect(offer?.merge.site.gates['gate:1']?.label).toBe('Truck gate');
    expect(offer?.merge.site.lines['line:1']?.label).toBe('Rear');
  });

  it('gives the same file when nothing was changed, on a device that keeps nothing as well', async () => {
    for (const works of ['works', 'fails'] as const) {
      const shelf = memoryShelf(works);
      const first = await asSaved(shelf, own(born));
      const again = await asSaved(shelf, own(born));
      expect(saveSite(again)).toBe(saveSite(first));
      expect(first.lineage.saves).toHaveProperty(digestOf(sampleSite));
    }
  });

  it('gives the same file again after other ones were saved', async () => {
    const shelf = memoryShelf();
    const first = await asSaved(shelf, own(sampleSite));
    await asSaved(shelf, own(renameGate(sampleSite, 'gate:1', 'Truck gate')));
    expect(saveSite(await asSaved(shelf, own(sampleSite)))).toBe(saveSite(first));
  });

  it('is told from one of another job, and from one that nobody knows the job of', async () => {
    const shelf = memoryShelf();
    await asSaved(shelf, own(sampleSite));
    const other = await asSaved(memoryShelf(), own(sampleSite));
    for (const site of [other, sampleSite]) {
      expect(await offerOf(shelf, own(sampleSite), { file: 'b.json', site })).toBeNull();
    }
  });

  it('is older, newer or the same where one came from the other', async () => {
    const shelf = memoryShelf();
    const first = sent(await asSaved(shelf, own(sampleSite)));
    const changed = renameGate(sampleSite, 'gate:1', 'Truck gate');
    const is = async (document: Site, site: Site) =>
      (await offerOf(shelf, own(document), { file: 'c.json', site }))?.is;
    expect(await is(changed, first)).toBe('older');
    expect(await is(sampleSite, first)).toBe('same');
    const later = sent(await asSaved(memoryShelf(), own(renameGate(first, 'gate:1', 'Kitchen'))));
    expect(await is(sampleSite, later)).toBe('newer');
  });

  it('is merged with everything of both where what both came from is not remembered', async () => {
    const shelf = memoryShelf();
    const there = sent(await asSaved(shelf, own(sampleSite)));
    const forgetful = { ...shelf, read: () => Promise.resolve(null) };
    const theirs = renameGate(there, 'gate:1', 'Truck gate');
    const mine = renameGate(sampleSite, 'gate:1', 'Drive in');
    const offer = await offerOf(forgetful, own(mine), { file: 'd.json', site: theirs });
    expect(offer?.is).toBe('without what both came from');
    if (offer === null || offer === undefined) throw new Error('expected an offer');
    expect(offer.merge.conflicts.map(({ what }) => what)).toEqual(['Gate Drive in: name']);
    const taken = settled(offer.merge, new Map([[offer.merge.conflicts[0]?.id ?? '', 'theirs']]));
    expect(taken.gates['gate:1']?.label).toBe('Truck gate');
  });
});

describe('the shelf of copies', () => {
  it('lets the longest unwanted go, by number and by size', () => {
    const shelved = new Map(
      [5, 1, 4, 2, 3].map((wanted) => [`copy ${wanted}`, { characters: 10, wanted }]),
    );
    expect(copiesTooMany(shelved, { count: 5, characters: 50 })).toEqual([]);
    expect(copiesTooMany(shelved, { count: 3, characters: 50 })).toEqual(['copy 2', 'copy 1']);
    expect(copiesTooMany(shelved, { count: 5, characters: 35 })).toEqual(['copy 1', 'copy 2']);
  });
});
