import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { FourTies } from '../../../src/geometry/homographyOf.ts';
import { projected } from '../../../src/geometry/projective.ts';
import { straightPlan } from '../../../src/geometry/straightPlan.ts';
import { straightened, type Pixels } from '../../../src/screens/pictures/straightened.ts';

/** A picture whose red grows to the right and whose green grows downwards, by one a pixel. */
const slopes = (width: number, height: number): Pixels => {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) data.set([x, y, 7, 255], (y * width + x) * 4);
  }
  return { data, width, height };
};

const taken = slopes(200, 160);
const nudge = fc.integer({ min: -18, max: 18 });
const corners = fc.tuple(nudge, nudge, nudge, nudge, nudge, nudge, nudge, nudge);

it('each pixel of a straightened picture is what the picture has where its ground was seen', () => {
  fc.assert(
    fc.property(corners, ([a, b, c, d, e, f, g, h]) => {
      const ties: FourTies = [
        { u: 40 + a, v: 30 + b, x: 0, y: 100 },
        { u: 160 + c, v: 30 + d, x: 150, y: 100 },
        { u: 160 + e, v: 130 + f, x: 150, y: 0 },
        { u: 40 + g, v: 130 + h, x: 0, y: 0 },
      ];
      const plan = straightPlan({ width: 200, height: 160, ties }, 256);
      if (plan === null) throw new Error('expected a plan');
      const flat = straightened(taken, plan.toPicture, plan);
      // between the four points every pixel is of the picture, and where it came from is told by its colour
      for (const [x, y] of [
        [20, 20],
        [75, 50],
        [130, 80],
        [20, 80],
      ] as const) {
        const column = Math.floor((x - plan.corner.x) / plan.pixel);
        const row = Math.floor((plan.corner.y - y) / plan.pixel);
        const from = projected(plan.toPicture, { x: column + 0.5, y: row + 0.5 });
        const at = (row * flat.width + column) * 4;
        const [red = NaN, green = NaN, blue, opacity] = flat.data.slice(at, at + 4);
        // a pixel's colour is that of its middle; bytes are rounded
        expect(Math.abs(red + 0.5 - from.x)).toBeLessThan(0.51);
        expect(Math.abs(green + 0.5 - from.y)).toBeLessThan(0.51);
        expect([blue, opacity]).toEqual([7, 255]);
      }
    }),
  );
});

it('what lies beside the picture or beyond its horizon is clear', () => {
  // pixels to the right of 50 are beyond the horizon, those above 20 beside the picture
  const flat = straightened(taken, [1, 0, 0, 0, 1, -20, -0.02, 0, 1], { width: 100, height: 60 });
  const opacityAt = (x: number, y: number) => flat.data[(y * 100 + x) * 4 + 3];
  expect(opacityAt(10, 10)).toBe(0);
  expect(opacityAt(10, 30)).toBe(255);
  expect(opacityAt(60, 30)).toBe(0);
  expect(opacityAt(99, 59)).toBe(0);
});
