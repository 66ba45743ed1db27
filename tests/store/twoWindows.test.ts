import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SitePoint } from '../../src/geometry/point.ts';
import { addMark } from '../../src/site/edits/addMark.ts';
import type { MarkId } from '../../src/site/ids.ts';
import type { Site } from '../../src/site/site.ts';
import { historyOf, openDesk, type Air } from './keptDesk.ts';
import { memoryShelf } from './memoryShelf.ts';
import { namedSite } from './namedSite.ts';

type Desk = Awaited<ReturnType<typeof openDesk>>;

const tick = () => new Promise((resolve) => setTimeout(resolve));

const present = ({ site }: Desk): Site => {
  const { history, drawn } = site.getState();
  return drawn(history.present.site);
};

/** Two windows with one job that lies on the shelf. */
const twoWindows = async () => {
  const memory = memoryShelf();
  const air: Air = new Set();
  const one = await openDesk({ ...memory, air, first: namedSite('job') });
  one.site.getState().commit(namedSite('both'), 'Edit');
  await one.keeper.now();
  const two = await openDesk({ ...memory, air });
  return { ...memory, one, two };
};

/** Until nothing is on its way any more. */
const settled = async (desks: readonly Desk[]): Promise<void> => {
  for (let round = 0; round < 6; round += 1) {
    await tick();
    for (const { keeper } of desks) await keeper.now();
  }
};

const edit = ({ site }: Desk, make: (site: Site) => Site, label = 'Edit'): void => {
  const { history, commit } = site.getState();
  commit(make(history.present.site), label);
};

const named =
  (label: string, x: number) =>
  (site: Site): Site =>
    addMark(site, { x, y: 0 } as SitePoint, label);

const labels = (site: Site): string[] =>
  Object.values(site.marks)
    .map(({ label }) => label)
    .toSorted();

describe('two windows with one job', () => {
  it('[H70] what is drawn in one appears in the other, and can be undone there', async () => {
    const { one, two } = await twoWindows();
    edit(one, named('stake', 10), 'Set mark');
    await settled([one, two]);
    expect(labels(present(two))).toEqual(['stake']);
    expect(historyOf(two.site)).toEqual(historyOf(one.site));
    two.site.getState().undo();
    await settled([one, two]);
    expect(labels(present(one))).toEqual([]);
    one.site.getState().redo();
    await settled([one, two]);
    expect(labels(present(two))).toEqual(['stake']);
  });

  it('[H71] what both drew at once is in both, the other’s step below one’s own', async () => {
    const { one, two } = await twoWindows();
    edit(one, named('from one', 10), 'One');
    edit(two, named('from two', 20), 'Two');
    await settled([one, two]);
    expect(labels(present(one))).toEqual(['from one', 'from two']);
    expect(present(two)).toEqual(present(one));
    expect(historyOf(two.site)).toEqual(historyOf(one.site));
  });

  it('[H72] what both changed to different values stands as it was changed last, is said, and undone', async () => {
    const { one, two } = await twoWindows();
    const renamed = (name: string) => (site: Site) => ({ ...site, job: { ...site.job, name } });
    edit(one, renamed('one'), 'Name');
    edit(two, renamed('two'), 'Name');
    await settled([one, two]);
    const { name } = present(one).job;
    expect(present(two).job.name).toBe(name);
    const [last, first] = name === 'two' ? [two, 'one'] : [one, 'two'];
    expect(last.session.getState().say).toMatch(/^Both windows changed .+\. It stands as/);
    last.site.getState().undo();
    expect(present(last).job.name).toBe(first);
  });

  it('[H73] a gesture that runs ends before what another window drew comes', async () => {
    const { one, two } = await twoWindows();
    const { history, preview, cancel } = two.site.getState();
    const draft = named('draft', 30)(history.present.site);
    preview(draft);
    edit(one, named('stake', 10));
    await one.keeper.now();
    await tick();
    await tick();
    expect(labels(present(two))).toEqual([]);
    expect(two.site.getState().history.draft).not.toBeNull();
    cancel();
    await settled([one, two]);
    expect(labels(present(two))).toEqual(['stake']);
  });

  it('[H71] after 500 edits in any order both have the same, and nothing is missing', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ window: fc.nat(1), waits: fc.nat(3), move: fc.boolean() }), {
          minLength: 500,
          maxLength: 500,
        }),
        async (edits) => {
          const { one, two } = await twoWindows();
          const desks = [one, two];
          const set: string[] = [];
          for (const [n, { window, waits, move }] of edits.entries()) {
            const desk = desks[window]!;
            const own = Object.keys(present(desk).marks)[n % 7] as MarkId | undefined;
            if (move && own !== undefined)
              edit(desk, (site) => {
                const mark = site.marks[own]!;
                return { ...site, marks: { ...site.marks, [own]: { ...mark, y: n } } };
              });
            else {
              set.push(`mark ${String(n).padStart(3, '0')}`);
              edit(desk, named(set.at(-1)!, n));
            }
            if (waits === 0) await tick();
          }
          await settled(desks);
          expect(labels(present(one))).toEqual(set.toSorted());
          expect(present(two)).toEqual(present(one));
          expect(historyOf(two.site).flat().length).toBe(historyOf(one.site).flat().length);
        },
      ),
      { numRuns: 2, endOnFailure: true },
    );
  }, 120_000);

  it('[H71] undo and redo in either leave both with the same', async () => {
    const step = fc.record({
      window: fc.nat(1),
      do: fc.constantFrom('edit', 'edit', 'undo', 'redo'),
      waits: fc.nat(2),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 30 }), async (steps) => {
        const { one, two } = await twoWindows();
        for (const [n, { window, do: what, waits }] of steps.entries()) {
          const desk = [one, two][window]!;
          if (what === 'edit') edit(desk, named(`mark ${n}`, n));
          else desk.site.getState()[what === 'undo' ? 'undo' : 'redo']();
          if (waits === 0) await tick();
        }
        await settled([one, two]);
        expect(present(two)).toEqual(present(one));
      }),
      { numRuns: 30 },
    );
  }, 60_000);
});
