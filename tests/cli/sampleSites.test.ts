import { describe, expect, it } from 'vitest';
import { legsOf } from '../../src/site/legsOf.ts';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import type { Site } from '../../src/site/site.ts';
import { sampleSite, sampleSites } from './sampleSites.ts';

const opened = (text: string): Site => {
  const site = openSite(text);
  if (!site.ok) throw new Error(site.reason);
  return site.value;
};

/** Leg lengths of every line in inches, from the marks alone. */
const legLengths = (site: Site): number[] =>
  Object.values(site.lines).flatMap((line) =>
    legsOf(line).map(({ start, end }) => {
      const [a, b] = [site.marks[start], site.marks[end]];
      return Math.hypot((b?.x ?? NaN) - (a?.x ?? NaN), (b?.y ?? NaN) - (a?.y ?? NaN));
    }),
  );

const total = (lengths: readonly number[]): number => lengths.reduce((sum, one) => sum + one, 0);

describe('sample sites', () => {
  it('there are five', () => {
    expect(sampleSites.map(({ name }) => name).toSorted()).toEqual([
      'back-yard',
      'contractors-yard',
      'corner-lot',
      'long-boundary',
      'sports-court',
    ]);
  });

  it.each(sampleSites)('[K4] $name opens and saves back to the same bytes', ({ text }) => {
    expect(saveSite(opened(text))).toBe(text);
  });

  it.each(sampleSites)('[K4] $name says that it is invented', ({ text }) => {
    const { job } = opened(text);
    expect(job.remark).toContain('invented');
    expect(job.name).toMatch(/^Sample yard: /);
  });

  it.each(sampleSites)('[K4] $name has marks to a 16th of an inch', ({ text }) => {
    const odd = Object.entries(opened(text).marks).filter(
      ([, { x, y }]) => !Number.isInteger(x * 16) || !Number.isInteger(y * 16),
    );
    expect(odd).toEqual([]);
  });

  it('differ as five yards do', () => {
    const of = (name: string): Site => opened(sampleSite(name));
    const leavesOf = (site: Site): number[] =>
      Object.values(site.gates).map(({ leaves }) => Object.keys(leaves).length);
    expect(leavesOf(of('back-yard')).toSorted()).toEqual([1, 2]);
    expect(leavesOf(of('corner-lot'))).toEqual([1, 1]);
    expect(Object.values(of('sports-court').specs)[0]?.fabricHeight).toBe(120);
    expect(Object.values(of('sports-court').lines)[0]?.closed).toBe(true);
    expect(total(legLengths(of('contractors-yard'))) / 12).toBeCloseTo(1200, -1);
    expect(Object.values(of('contractors-yard').gates).map(({ nominal }) => nominal)).toContain(
      24 * 12,
    );
    expect(legLengths(of('long-boundary')).length).toBeGreaterThan(100);
    expect(Object.values(of('long-boundary').lines)[0]?.closed).toBe(false);
  });
});
