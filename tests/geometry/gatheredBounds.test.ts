import fc from 'fast-check';
import { expect, it } from 'vitest';
import { unionOfBounds, type Bounds } from '../../src/geometry/bounds.ts';
import { gatheredBounds } from '../../src/geometry/gatheredBounds.ts';

const anyBounds = fc
  .tuple(fc.nat(40), fc.nat(40), fc.nat(6), fc.nat(6))
  .map(([minX, minY, across, up]): Bounds => ({
    minX,
    minY,
    maxX: minX + across,
    maxY: minY + up,
  }));

const area = ({ minX, minY, maxX, maxY }: Bounds): number => (maxX - minX) * (maxY - minY);

const holds = (a: Bounds, b: Bounds): boolean =>
  a.minX <= b.minX && a.minY <= b.minY && a.maxX >= b.maxX && a.maxY >= b.maxY;

it('every bounds lies in one of those gathered, which waste no more than is allowed and are none too many', () => {
  fc.assert(
    fc.property(fc.array(anyBounds, { maxLength: 12 }), fc.nat(50), (all, waste) => {
      const gathered = gatheredBounds(all, { waste, most: 5 });
      for (const one of all) expect(gathered.some((each) => holds(each, one))).toBe(true);
      expect(gathered.length).toBeLessThanOrEqual(5);
      const apart = gatheredBounds(all, { waste, most: Infinity });
      const sum = (some: readonly Bounds[]): number => some.reduce((so, one) => so + area(one), 0);
      expect(sum(apart)).toBeLessThanOrEqual(sum(all) + waste * (all.length - apart.length));
      apart.forEach((a, n) =>
        apart
          .slice(n + 1)
          .forEach((b) =>
            expect(area(unionOfBounds(a, b))).toBeGreaterThan(area(a) + area(b) + waste),
          ),
      );
    }),
  );
});

it('far bounds stay apart, and become one where that is too many', () => {
  const corner = (x: number, y: number): Bounds => ({ minX: x, minY: y, maxX: x + 1, maxY: y + 1 });
  const all = [corner(0, 0), corner(90, 0), corner(0.5, 0.5), corner(0, 90)];
  expect(gatheredBounds(all, { waste: 4, most: 3 }).length).toBe(3);
  expect(gatheredBounds(all, { waste: 4, most: 2 })).toEqual([
    { minX: 0, minY: 0, maxX: 91, maxY: 91 },
  ]);
});
