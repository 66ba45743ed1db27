import { describe, expect, it } from 'vitest';
import { inRanges } from '../../../../src/drawing/sheet/sections/inRanges.ts';

describe('inRanges', () => {
  it('[D36] draws numbers in a row together as posts and keeps everything else', () => {
    expect(inRanges(['7', 'House', '4', '5', '6', '9', '10', 'A–B 3\'-0"'])).toEqual([
      'House',
      'A–B 3\'-0"',
      'posts 4–7, 9, 10',
    ]);
  });

  it('is empty for nothing', () => {
    expect(inRanges([])).toEqual([]);
  });
});
