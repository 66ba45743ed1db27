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

test('what is shown calmly is right at once but amid a gesture, and there within a quarter of a second', () => {
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
        if (!drafted || real().draft === null || (deed.do === 'wait' && deed.for >= 250))
          expect(shown()).toBe(real());
        expect(shown().present).toBe(real().present);
      }
      vi.advanceTimersByTime(250);
      expect(shown()).toBe(real());
      leave();
      site.getState().commit(named(10), 'Name');
      expect(shown()).not.toBe(real());
    }),
  );
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
