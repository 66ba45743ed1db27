import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Atom } from '../../src/drawing/atom.ts';
import { differingBounds } from '../../src/drawing/differingBounds.ts';
import { rectangleOutline } from '../../src/drawing/explode/polylineOutline.ts';
import { inkedBounds } from '../../src/drawing/inkedBounds.ts';
import { boundsOverlap } from '../../src/geometry/bounds.ts';
import { radians } from '../../src/units/radians.ts';

const inks = ['line', 'text', 'gate'] as const;

const place = fc.tuple(fc.nat(6), fc.nat(6)).map(([x, y]) => ({ x, y }));

const box = fc.tuple(place, fc.nat(2), fc.constantFrom(...inks)).map(([at, size, ink]): Atom => ({
  do: 'fill',
  ink,
  opacity: 1,
  outline: rectangleOutline(at, 0.2 + size, 0.3),
}));

const word = fc.tuple(place, fc.constantFrom('1', '12', '20')).map(([at, text]): Atom => ({
  do: 'text',
  text,
  at,
  size: 0.15,
  angle: radians(0),
  align: 'middle',
  baseline: 'middle',
  weight: 'regular',
  ink: 'text',
  halo: 'none',
}));

const drawing = fc.array(fc.oneof(box, word), { maxLength: 12 });

/** The atoms that a place of the paper is painted by, in their order. */
const painting = (atoms: readonly Atom[], at: { x: number; y: number }): readonly Atom[] => {
  const spot = { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y };
  return atoms.filter((atom) => {
    const around = inkedBounds([atom]);
    return around !== null && boundsOverlap(around, spot);
  });
};

const spots = Array.from({ length: 90 * 70 }, (_, n) => ({
  x: -0.45 + (n % 90) / 10,
  y: -0.45 + Math.floor(n / 90) / 10,
}));

test('outside of where two drawings differ every place is painted by the same atoms in the same order', () => {
  fc.assert(
    fc.property(drawing, drawing, fc.nat(12), fc.nat(12), (one, other, from, to) => {
      // drawings that share much, as those of two moves of a hand
      const now = [...one.slice(0, from), ...other.slice(0, 3), ...one.slice(to)];
      const bounds = differingBounds(one, now);
      for (const at of spots) {
        if (
          bounds !== null &&
          boundsOverlap(bounds, { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })
        )
          continue;
        expect(painting(now, at)).toEqual(painting(one, at));
      }
    }),
    { numRuns: 60 },
  );
});

test('what was put in alone is where a drawing differs from the one without it', () => {
  fc.assert(
    fc.property(drawing, fc.nat(12), (all, at) => {
      const put: Atom = {
        do: 'fill',
        ink: 'stop',
        opacity: 1,
        outline: rectangleOutline({ x: 9, y: 9 }, 1, 1),
      };
      const now = [...all.slice(0, at), put, ...all.slice(at)];
      for (const bounds of [differingBounds(all, now), differingBounds(now, all)])
        expect(bounds).toEqual({ minX: 8.94, minY: 8.94, maxX: 10.06, maxY: 10.06 });
      expect(differingBounds(all, JSON.parse(JSON.stringify(all)) as Atom[])).toBe(null);
    }),
  );
});
