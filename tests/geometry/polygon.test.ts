import { describe, expect, it } from 'vitest';
import { edges } from '../../src/geometry/polygon.ts';

describe('edges', () => {
  const [a, b, c] = [
    { x: 0, y: 0 },
    { x: 4, y: 0 },
    { x: 0, y: 3 },
  ];

  it('join the last point to the first', () => {
    expect(edges([a, b, c])).toEqual([
      { start: a, end: b },
      { start: b, end: c },
      { start: c, end: a },
    ]);
  });

  it('are none for a single point', () => {
    expect(edges([a])).toEqual([]);
  });

  it('go there and back between two points', () => {
    expect(edges([a, b])).toEqual([
      { start: a, end: b },
      { start: b, end: a },
    ]);
  });
});
