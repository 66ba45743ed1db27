import { describe, expect, it } from 'vitest';
import { receiverDepth, receiverFor, receiverHole } from '../../src/trade/receivers.ts';
import { inches } from '../../src/units/inches.ts';

const grounds = ['firm soil', 'loose soil', 'concrete', 'paving'] as const;

describe('receivers', () => {
  // 16 to 24 in deep, deeper in looser ground: common practice, no published source
  it('[T12] every ground has a receiver in the usual range, the loosest the deepest', () => {
    const depths = grounds.map((ground) => receiverFor(ground).depth);
    expect(depths.every((depth) => depth >= 16 && depth <= 24)).toBe(true);
    expect(receiverFor('loose soil').depth).toBe(Math.max(...depths));
    expect(receiverFor('loose soil').depth).toBeGreaterThan(receiverFor('firm soil').depth);
    expect([receiverDepth.least, receiverDepth.most]).toEqual([16, 24]);
  });

  it('[T12] the kind follows the ground, and the rod goes in', () => {
    expect(grounds.map((ground) => receiverFor(ground).kind)).toEqual([
      'driven pipe',
      'set in concrete',
      'drilled',
      'set in concrete',
    ]);
    for (const ground of grounds) {
      const { inside, rod, source } = receiverFor(ground);
      expect(inside).toBeGreaterThan(rod);
      expect(source.text).toContain('no published source');
    }
  });

  it('[T12] only a sleeve in concrete wants a wider hole than it is inside', () => {
    expect(receiverHole('driven pipe', inches(1.049)).diameter).toBe(1.049);
    expect(receiverHole('drilled', inches(1.25)).diameter).toBe(1.25);
    expect(receiverHole('set in concrete', inches(1.25)).diameter).toBe(10);
  });
});
