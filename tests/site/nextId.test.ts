import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextId, nextIds } from '../../src/site/nextId.ts';
import { sampleSite } from './sampleSite.ts';
import type { Mark } from '../../src/site/mark.ts';

describe('the next id', () => {
  it('[S8] has the smallest number not in use, for every kind', () => {
    expect(nextId(sampleSite, 'mark')).toBe('mark:12');
    expect(nextId(sampleSite, 'vertex')).toBe('vertex:11');
    expect(nextId(sampleSite, 'line')).toBe('line:3');
    expect(nextId(sampleSite, 'gate')).toBe('gate:3');
    expect(nextId(sampleSite, 'leaf')).toBe('leaf:4');
    expect(nextId(sampleSite, 'feature')).toBe('feature:3');
    expect(nextId(sampleSite, 'spec')).toBe('spec:2');
    expect(nextId(sampleSite, 'hardware')).toBe('hardware:4');
  });

  it('[S8] several at once are what one after the other would give', () => {
    const mark: Mark = { x: 0, y: 0, label: '', fixed: false };
    fc.assert(
      fc.property(fc.uniqueArray(fc.nat(30)), fc.integer({ min: 1, max: 20 }), (used, count) => {
        let site = {
          ...sampleSite,
          marks: Object.fromEntries(used.map((n) => [`mark:${n}` as const, mark])),
        };
        const expected = [];
        for (let n = 0; n < count; n += 1) {
          const id = nextId(site, 'mark');
          expected.push(id);
          site = { ...site, marks: { ...site.marks, [id]: mark } };
        }
        const first = {
          ...sampleSite,
          marks: Object.fromEntries(used.map((n) => [`mark:${n}` as const, mark])),
        };
        expect(nextIds(first, 'mark', count)).toEqual(expected);
        expect(expected.every((id) => !(id in first.marks))).toBe(true);
      }),
    );
  });
});
