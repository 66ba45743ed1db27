import { describe, expect, it } from 'vitest';
import { gatePostFor, gatePostSizes } from '../../src/trade/gatePosts.ts';
import { inches } from '../../src/units/inches.ts';

describe('gatePostFor', () => {
  it('[T5] is Table 1 of MIL-HDBK-1013/10 (14 May 1993), every row', () => {
    const rows = gatePostSizes.map(({ over, upTo, post, footingDiameter, footingDepth }) => [
      over / 12,
      upTo / 12,
      post.od,
      footingDiameter,
      footingDepth,
    ]);
    expect(rows).toEqual([
      [0, 6, 2.875, 18, 36],
      [6, 12, 4, 24, 36],
      [12, 18, 6.625, 36, 36],
      [18, 24, 8.625, 40, 36],
    ]);
  });

  it('[T5] takes a leaf at the limit by the row that ends there', () => {
    expect(gatePostFor(inches(56.875))?.post.od).toBe(2.875);
    expect(gatePostFor(inches(72))?.post.od).toBe(2.875);
    expect(gatePostFor(inches(72.125))?.post.od).toBe(4);
    expect(gatePostFor(inches(288))?.post.od).toBe(8.625);
  });

  it('[T5] has no answer over 24 ft', () => {
    expect(gatePostFor(inches(288.125))).toBeNull();
  });

  it('leaves no gap between its rows', () => {
    expect(gatePostSizes.slice(1).map(({ over }) => over)).toEqual(
      gatePostSizes.slice(0, -1).map(({ upTo }) => upTo),
    );
  });
});
