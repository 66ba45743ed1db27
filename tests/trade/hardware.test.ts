import { describe, expect, it } from 'vitest';
import { assumedHardware, dropRod, forkLatch, residentialHinge } from '../../src/trade/hardware.ts';

const single = (end: 'low' | 'high') => residentialHinge.takes[end] + forkLatch.takes[end];
const double = (end: 'low' | 'high') => 2 * residentialHinge.takes[end] + dropRod.takes[end];

describe('assumedHardware', () => {
  it('[T8] low, planned and high rise, and none is called published', () => {
    for (const { kind, takes, source } of assumedHardware) {
      if (kind === 'closer') expect(takes).toEqual({ low: 0, planned: 0, high: 0 });
      else expect(takes.low).toBeGreaterThan(0);
      expect(takes.planned).toBeGreaterThanOrEqual(takes.low);
      expect(takes.high).toBeGreaterThanOrEqual(takes.planned);
      expect(source.status).not.toBe('published');
    }
  });

  it('[T8] hinges of a size that is not sure are planned at the largest they may take', () => {
    const hinges = assumedHardware.filter(({ kind }) => kind === 'hinge');
    const unsure = hinges.filter(({ spread }) => spread === 'uncertain');
    expect(unsure.length).toBeGreaterThan(1);
    for (const { takes } of unsure) expect(takes.planned).toBe(takes.high);
  });

  it('[T8] a hinge that can be set is planned between its ends, with room both ways', () => {
    const set = assumedHardware.filter(({ spread }) => spread === 'adjustable');
    expect(set.length).toBeGreaterThan(0);
    for (const { kind, takes } of set) {
      expect(kind).toBe('hinge');
      expect(takes.planned).toBeGreaterThan(takes.low);
      expect(takes.planned).toBeLessThan(takes.high);
    }
  });

  it('[T8] there is something of every kind, and no two are called alike', () => {
    const kinds = new Set(assumedHardware.map(({ kind }) => kind));
    expect([...kinds].toSorted()).toEqual(['closer', 'drop rod', 'hinge', 'latch']);
    const labels = assumedHardware.map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });

  it.each([
    ['3-5/8 to 4 under', 3.625, 4],
    ['3-1/2 to 3-3/4 under', 3.5, 3.75],
    ['3-3/4 to 4 under', 3.75, 4],
    ['44 to 44-3/8 in 48', 48 - 44.375, 48 - 44],
  ])('[T8] covers what is said of single gates: %s', (_, least, most) => {
    // common practice, no published source
    expect(single('low')).toBeLessThanOrEqual(least);
    expect(single('high')).toBeGreaterThanOrEqual(most);
  });

  it.each([
    ['single', 1, forkLatch],
    ['double', 2, dropRod],
  ] as const)(
    '[T8] the planned gap of a %s gate catches whatever its hinges take',
    (_, count, latch) => {
      const hinge = residentialHinge.takes;
      const widest = latch.takes.planned + count * (hinge.planned - hinge.low);
      const narrowest = latch.takes.planned - count * (hinge.high - hinge.planned);
      expect(widest).toBeLessThanOrEqual(latch.takes.high);
      expect(narrowest).toBeGreaterThanOrEqual(latch.takes.low);
    },
  );

  it('[T8] covers what is said of double gates: 6-1/4 to 6-3/4 under', () => {
    // common practice, no published source
    expect(double('low')).toBeLessThanOrEqual(6.25);
    expect(double('high')).toBe(6.75);
  });
});
