import { describe, expect, it } from 'vitest';
import { drawOnPaper } from '../../../src/drawing/drawOnPaper.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { handYard } from '../handYard.ts';
import { textsOf } from '../textsOf.ts';

/** An upright fence of 100 ft with a post every 10 ft, at 1 in = 10 ft. */
const { site, layout } = handYard([
  {
    corners: [
      { x: 0, y: 0 },
      { x: 0, y: 1200 },
    ],
    closed: false,
    maxBay: 120,
    gates: [],
  },
]);
const projection = { origin: { x: -600, y: 1300 }, scale: 1 / 120 };

const sidesOf = (more: readonly Primitive[]): number[] => {
  const { atoms } = drawOnPaper([...more, ...drawPlan(site, layout)], projection);
  const numbers = textsOf(atoms).filter(({ text }) => /^[1-9]$/.test(text));
  expect(numbers).toHaveLength(9);
  // the fence lies 5 in from the left of the paper
  return numbers.map(({ at }) => Math.sign(at.x - 5));
};

const upright = (x: number, from: number, to: number): Primitive => ({
  kind: 'polyline',
  points: [
    { x, y: from },
    { x, y: to },
  ],
  closed: false,
  pen: 'paving',
});

describe('a row of numbers', () => {
  it('[D33] stands on one side of a run, all at the height of their posts', () => {
    const { atoms } = drawOnPaper(drawPlan(site, layout), projection);
    const numbers = textsOf(atoms).filter(({ text }) => /^[1-9]$/.test(text));
    const posts = numbers.map(({ text }) => layout.posts.get(`post:${text}`)?.at.y ?? NaN);
    expect(new Set(numbers.map(({ at }) => Math.sign(at.x - 5))).size).toBe(1);
    numbers.forEach(({ at }, n) => expect(at.y).toBeCloseTo((1300 - (posts[n] ?? 0)) / 120, 1));
  });

  it('[D33] goes to the other side as a whole where a line runs through it', () => {
    const [free] = sidesOf([]);
    const near = (free ?? 1) * 15;
    expect(sidesOf([upright(near, 0, 1200)])).toEqual(Array(9).fill(-(free ?? 1)));
  });

  it('[D33] stays where one of its numbers alone lies on a line', () => {
    const [free] = sidesOf([]);
    const near = (free ?? 1) * 15;
    expect(sidesOf([upright(near, 580, 620)])).toEqual(Array(9).fill(free));
  });
});
