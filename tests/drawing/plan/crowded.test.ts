import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { drawOnPaper } from '../../../src/drawing/drawOnPaper.ts';
import { radiusOnPaper } from '../../../src/drawing/explode/radiusOnPaper.ts';
import { handYard } from '../handYard.ts';
import { textsOf } from '../textsOf.ts';

/** 1,000 ft of straight fence with a post every 10 ft. */
const { site, layout } = handYard([
  {
    corners: [
      { x: 0, y: 0 },
      { x: 12_000, y: 0 },
    ],
    closed: false,
    maxBay: 120,
    gates: [],
  },
]);
const plan = drawPlan(site, layout, { omit: ['chains'] });

const numbersAt = (feetToTheInch: number): number[] =>
  textsOf(drawOnPaper(plan, { origin: { x: 0, y: 0 }, scale: 1 / (12 * feetToTheInch) }).atoms)
    .map(({ text }) => Number(text))
    .filter((number) => Number.isFinite(number));

describe('a plan with little room', () => {
  it('[D29] writes every number where there is room', () => {
    expect(numbersAt(20)).toEqual(Array.from({ length: 99 }, (_, n) => n + 1));
  });

  it.each([
    [50, 2],
    [200, 10],
    [500, 20],
  ])('[D29] at 1 in = %i ft writes each number that %i divides', (feet, step) => {
    const numbers = numbersAt(feet);
    expect(numbers).toEqual(
      Array.from({ length: Math.floor(99 / step) }, (_, n) => (n + 1) * step),
    );
  });

  it('[D29] draws no line post over the next', () => {
    const circles = plan.flatMap((one) => (one.kind === 'circle' ? [one] : []));
    const inner = circles.filter(({ apart }) => apart !== undefined);
    expect(inner).toHaveLength(2 * 99);
    for (const feet of [20, 100, 300]) {
      const scale = 1 / (12 * feet);
      for (const circle of inner)
        expect(2 * radiusOnPaper(circle, { origin: { x: 0, y: 0 }, scale })).toBeLessThan(
          120 * scale,
        );
    }
  });
});
