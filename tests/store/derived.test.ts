import { describe, expect, it } from 'vitest';
import type { Layout } from '../../src/engine/layout.ts';
import { rememberLayouts } from '../../src/store/derived.ts';
import { namedSite } from './namedSite.ts';

const empty: Layout = { lines: {}, posts: {}, gates: {}, ground: null, load: [], flags: [] };

describe('derived', () => {
  it('[H6] lays the present and the draft out once each', () => {
    const asked: string[] = [];
    const layoutOf = rememberLayouts((site) => {
      asked.push(site.job.name);
      return { ...empty };
    });
    const [present, draft, next] = [namedSite('present'), namedSite('draft'), namedSite('next')];
    const first = layoutOf(present);
    layoutOf(draft);
    expect(layoutOf(present)).toBe(first);
    layoutOf(draft);
    expect(asked).toEqual(['present', 'draft']);
    layoutOf(next);
    layoutOf(draft);
    expect(asked).toEqual(['present', 'draft', 'next']);
    expect(layoutOf(present)).not.toBe(first);
  });

  it('[H6] a document with the same content is another document', () => {
    let count = 0;
    const layoutOf = rememberLayouts(() => {
      count += 1;
      return { ...empty };
    });
    layoutOf(namedSite('twin'));
    layoutOf(namedSite('twin'));
    expect(count).toBe(2);
  });
});
