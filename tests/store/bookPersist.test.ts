import { describe, expect, it } from 'vitest';
import type { Hardware } from '../../src/site/hardware.ts';
import type { HardwareId } from '../../src/site/ids.ts';
import type { Parts } from '../../src/site/parts.ts';
import type { TownRule } from '../../src/site/townRule.ts';
import { keepBook, loadBook } from '../../src/store/bookPersist.ts';
import { bookPlaces, deviceBookShelf, type BookShelf } from '../../src/store/bookShelf.ts';
import { createBookStore } from '../../src/store/bookStore.ts';
import { hardwareKind } from '../../src/store/hardwareKind.ts';
import { townRuleKind } from '../../src/store/townRuleKind.ts';
import { inches } from '../../src/units/inches.ts';
import { inventedHinge } from './invented.ts';

const generic: Parts = { 'hardware:a': inventedHinge('A'), 'hardware:b': inventedHinge('B') };

/** A shelf in memory that copies values as a database would, and keeps what each write had. */
const memory = () => {
  const values = new Map<string, unknown>();
  const writes: string[][] = [];
  const shelf: BookShelf = {
    readAll: async () => {
      await Promise.resolve();
      return structuredClone(values);
    },
    write: async (next) => {
      await Promise.resolve();
      writes.push(Object.keys(next));
      for (const [key, value] of Object.entries(next)) values.set(key, structuredClone(value));
    },
  };
  return { shelf, values, writes };
};

/** A tab that has the book open. */
const openTab = async (shelf: BookShelf) => {
  const { entries } = await loadBook({ kind: hardwareKind, shelf, generic });
  const book = createBookStore(hardwareKind, entries);
  const said: string[] = [];
  const keeper = keepBook({
    kind: hardwareKind,
    shelf,
    book,
    generic,
    say: (line) => said.push(line),
  });
  const put = (id: HardwareId, part: Hardware | null) =>
    book.getState().change('Change', { [id]: part });
  return { book, keeper, put, said, parts: () => book.getState().entries };
};

describe('the book on the device', () => {
  it('[H13] starts with the generic parts and writes only the entries that were changed', async () => {
    const { shelf, writes } = memory();
    const tab = await openTab(shelf);
    expect(tab.parts()).toEqual(generic);
    await tab.keeper.now();
    expect(writes).toEqual([]);
    tab.put('hardware:c', inventedHinge('C'));
    await tab.keeper.now();
    tab.put('hardware:a', inventedHinge('A', 3));
    await tab.keeper.now();
    expect(writes).toEqual([['hardware:c'], ['hardware:a']]);
    expect((await openTab(shelf)).parts()).toEqual(tab.parts());
  });

  it('[H13] a generic part that was taken out stays out, and undo brings it back', async () => {
    const { shelf } = memory();
    const tab = await openTab(shelf);
    tab.put('hardware:a', null);
    await tab.keeper.now();
    expect(Object.keys((await openTab(shelf)).parts())).toEqual(['hardware:b']);
    tab.book.getState().undo();
    await tab.keeper.now();
    expect((await openTab(shelf)).parts()).toEqual(generic);
  });

  it('[H14] two tabs: the last to write an entry has it, and all else of both is kept', async () => {
    const { shelf } = memory();
    const [one, two] = [await openTab(shelf), await openTab(shelf)];
    one.put('hardware:a', inventedHinge('A', 3));
    one.put('hardware:one', inventedHinge('One'));
    await one.keeper.now();
    two.put('hardware:b', null);
    two.put('hardware:two', inventedHinge('Two'));
    two.put('hardware:one', null);
    two.put('hardware:a', inventedHinge('A', 4));
    await two.keeper.now();
    await one.keeper.refresh();
    const expected = {
      'hardware:a': inventedHinge('A', 4),
      'hardware:one': inventedHinge('One'),
      'hardware:two': inventedHinge('Two'),
    };
    // the second tab never knew of hardware:one, so that it had nothing there to take out
    expect(one.parts()).toEqual(expected);
    expect((await openTab(shelf)).parts()).toEqual(expected);
    expect(one.book.getState().past).toHaveLength(2);
  });

  it('[H14] a change made while another tab’s book is being read is not lost', async () => {
    const { shelf } = memory();
    const [one, two] = [await openTab(shelf), await openTab(shelf)];
    two.put('hardware:b', inventedHinge('B', 5));
    await two.keeper.now();
    const reading = one.keeper.refresh();
    one.put('hardware:a', inventedHinge('A', 3));
    await reading;
    await one.keeper.now();
    const both = { 'hardware:a': inventedHinge('A', 3), 'hardware:b': inventedHinge('B', 5) };
    expect(one.parts()).toEqual(both);
    expect((await openTab(shelf)).parts()).toEqual(both);
  });

  it('[H8] a shelf that fails is told once, and what was not written is tried again', async () => {
    const { shelf, values } = memory();
    let broken = true;
    const tab = await openTab({
      ...shelf,
      write: (next) =>
        broken ? Promise.reject(new Error('the disk\nis full')) : shelf.write(next),
    });
    tab.put('hardware:a', inventedHinge('A', 3));
    await tab.keeper.now();
    expect(tab.said).toEqual([
      'The hardware book is not being kept on the device: the disk is full',
    ]);
    broken = false;
    tab.put('hardware:b', null);
    await tab.keeper.now();
    expect([...values.keys()]).toEqual(['hardware:a', 'hardware:b']);
    expect(tab.said).toHaveLength(1);
  });

  it('[H8] an entry that cannot be read is told, stays on the shelf, and hides no other', async () => {
    const { shelf, values } = memory();
    values.set('hardware:a', { version: 70, part: inventedHinge('A', 9) });
    values.set('__proto__', { version: 2, part: null });
    values.set('hardware:c', { version: 2, part: inventedHinge('C') });
    const { entries, trouble } = await loadBook({ kind: hardwareKind, shelf, generic });
    expect(entries).toEqual({ ...generic, 'hardware:c': inventedHinge('C') });
    expect(trouble).toMatch(/has 2 entries that this program cannot read; they stay there\.$/);
    const tab = await openTab(shelf);
    tab.put('hardware:b', null);
    await tab.keeper.now();
    expect(values.get('hardware:a')).toEqual({ version: 70, part: inventedHinge('A', 9) });
  });

  it('[H8] a device without a database is a trouble told, not thrown', async () => {
    const shelf = deviceBookShelf(bookPlaces.hardware);
    const { entries, trouble } = await loadBook({ kind: hardwareKind, shelf, generic });
    expect(entries).toBe(generic);
    expect(trouble).toMatch(/^The hardware book could not be read from this device: .*indexedDB/);
  });

  it('[H30] rules of towns are kept by themselves, and one that says nothing is not read', async () => {
    const { shelf, values } = memory();
    const rule: TownRule = {
      town: 'Inventedville',
      measure: 'fence no higher than',
      limit: inches(48),
      words: '',
      source: '',
    };
    const from = { kind: townRuleKind, shelf, generic: {}, say: () => undefined };
    const book = createBookStore(townRuleKind, (await loadBook(from)).entries);
    expect(book.getState().entries).toEqual({});
    const keeper = keepBook({ ...from, book });
    const { change } = book.getState();
    change('Add', { 'town-rule:a': rule, 'town-rule:b': rule });
    await keeper.now();
    expect(values.get('town-rule:a')).toEqual({ version: 7, rule });
    values.set('town-rule:b', { version: 7, rule: { ...rule, limit: null } });
    expect(await loadBook(from)).toEqual({
      entries: { 'town-rule:a': rule },
      trouble:
        'The book of town rules kept on this device has 1 entry that this program cannot read; they stay there.',
    });
    expect(() => change('Change', { 'town-rule:a': { ...rule, measure: null } })).toThrow(
      'book › town-rule:a › limit: expected nothing, or a measure that it limits',
    );
    expect(new Set(Object.values(bookPlaces).map(({ chest }) => chest)).size).toBe(2);
  });
});
