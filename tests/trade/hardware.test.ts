import { describe, expect, it } from 'vitest';
import { assumedHardware, dropRod, forkLatch, residentialHinge } from '../../src/trade/hardware.ts';

const single = (end: 'low' | 'high') => residentialHinge.takes[end] + forkLatch.takes[end];
const double = (end: 'low' | 'high') => 2 * residentialHinge.takes[end] + dropRod.takes[end];

describe('assumedHardware', () => {
  it('[T8] low, planned and high rise, and none is called published', () => {
    for (const { takes, source } of assumedHardware) {
      expect(takes.low).toBeGreaterThan(0);
      expect(takes.planned).toBeGreaterThanOrEqual(takes.low);
      expect(takes.high).toBeGreaterThanOrEqual(takes.planned);
      expect(source.status).not.toBe('published');
    }
  });

  it('[T8] hinges are planned at the largest they may take', () => {
    const hinges = assumedHardware.filter(({ kind }) => kind === 'hinge');
    expect(hinges.length).toBeGreaterThan(1);
    for (const { takes } of hinges) expect(takes.planned).toBe(takes.high);
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
