import { describe, expect, it } from 'vitest';
import { orderLeaves } from '../../../src/site/edits/orderLeaves.ts';
import { inches } from '../../../src/units/inches.ts';
import { createSiteStore } from '../../../src/store/siteStore.ts';
import { sampleSite } from '../sampleSite.ts';

const both = [
  { id: 'leaf:1', width: inches(56) },
  { id: 'leaf:2', width: inches(57.5) },
] as const;

describe('orderLeaves', () => {
  it('[S9] every leaf becomes one to be made of its own width, and nothing else changes', () => {
    const site = orderLeaves(sampleSite, 'gate:1', both);
    const { leaves, ...gate } = site.gates['gate:1'] ?? {};
    const { leaves: old, ...was } = sampleSite.gates['gate:1'] ?? {};
    expect(gate).toEqual(was);
    expect(Object.keys(leaves ?? {})).toEqual(Object.keys(old ?? {}));
    for (const { id, width } of both) {
      expect(leaves?.[id]).toEqual({
        ...old?.[id],
        widths: { top: width, middle: null, bottom: null },
        from: 'catalogue',
        on: '',
      });
    }
    expect(orderLeaves(site, 'gate:1', both)).toBe(site);
  });

  it('[S11] refuses all of them where one cannot be', () => {
    const [first] = both;
    const wrong = [
      { id: 'leaf:9', width: inches(50) },
      { id: 'leaf:2', width: inches(0) },
    ] as const;
    for (const one of wrong) {
      expect(() => orderLeaves(sampleSite, 'gate:1', [first, one])).toThrow(RangeError);
    }
    expect(() => orderLeaves(sampleSite, 'gate:9', both)).toThrow(/gate:9/);
  });

  it('both leaves are taken back in one step', () => {
    const store = createSiteStore(sampleSite);
    store.getState().commit(orderLeaves(sampleSite, 'gate:1', both), 'Take ordered leaves');
    store.getState().undo();
    expect(store.getState().history.present.site).toBe(sampleSite);
  });
});
