import { describe, expect, it } from 'vitest';
import { unitVector } from '../../src/geometry/unitVector.ts';

describe('unitVector', () => {
  it('has length 1 and points the same way', () => {
    expect(unitVector({ x: 1, y: 1 }, { x: 4, y: -3 })).toEqual({ x: 0.6, y: -0.8 });
  });

  it('is null between points that coincide', () => {
    expect(unitVector({ x: 1, y: 1 }, { x: 1, y: 1 })).toBeNull();
  });
});
