import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Layout } from '../../src/engine/layout.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { calmSite } from '../../src/screens/calmSite.ts';
import type { Site } from '../../src/site/site.ts';
import { createSiteStore } from '../../src/store/siteStore.ts';
import { bare } from '../engine/plainYard.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const named = (name: number): Site => ({ ...bare, job: { ...bare.job, name: `${name}` } });

const deeds = fc.array(
  fc.oneof(
    fc.record({ do: fc.constantFrom('preview' as const, 'commit' as const), to: fc.nat(9) }),
    fc.record({ do: fc.constantFrom('cancel' as const, 'undo' as const) }),
    fc.record({ do: fc.constant('wait' as const), for: fc.nat(300) }),
  ),
  { maxLength: 30 },
);

test('what is shown calmly is right at once but amid a gesture, and as soon as the hand rests', () => {
  fc.assert(
    fc.property(deeds, (all) => {
      const site = createSiteStore(bare);
      const calm = calmSite({ site, layOut: layOutSite });
      const leave = calm.follow();
      const shown = () => calm.site.getState().history;
      const real = () => site.getState().history;
      for (const deed of all) {
        const drafted = real().draft !== null;
        if (deed.do === 'wait') vi.advanceTimersByTime(deed.for);
        else if (deed.do === 'preview') site.getState().preview(named(deed.to));
        else if (deed.do === 'commit') site.getState().commit(named(deed.to), 'Name');
        else site.getState()[deed.do]();
        if (!drafted || real().draft === null || (deed.do === 'wait' && deed.for >= 150))
          expect(shown()).toBe(real());
        expect(shown().present).toBe(real().present);
      }
      vi.advanceTimersByTime(150);
      expect(shown()).toBe(real());
      leave();
      site.getState().commit(named(10), 'Name');
      expect(shown()).not.toBe(real());
    }),
  );
});

test('what is shown calmly is no later than three quarters of a second while the hand does not rest', () => {
  const site = createSiteStore(bare);
  const calm = calmSite({ site, layOut: layOutSite });
  calm.follow();
  const shown: string[] = [];
  for (let n = 0; n < 30; n += 1) {
    site.getState().preview(named(n));
    vi.advanceTimersByTime(50);
    const name = calm.site.getState().history.draft?.job.name ?? '';
    if (shown.at(-1) !== name) shown.push(name);
  }
  expect(shown).toEqual(['0', '15']);
});

test('what is shown calmly is laid out once, however far the hand has gone on', () => {
  const site = createSiteStore(bare);
  const asked: Site[] = [];
  const layOut = (of: Site): Layout => {
    asked.push(of);
    return layOutSite(of);
  };
  const calm = calmSite({ site, layOut });
  calm.follow();
  site.getState().preview(named(1));
  const seen = calm.site.getState().history.draft ?? bare;
  const first = calm.layOut(seen);
  for (const name of [2, 3, 4]) site.getState().preview(named(name));
  expect(calm.site.getState().history.draft).toBe(seen);
  expect(calm.layOut(seen)).toBe(first);
  expect(asked).toEqual([seen]);
});
