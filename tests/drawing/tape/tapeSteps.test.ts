import { describe, expect, it } from 'vitest';
import { tapeSteps } from '../../../src/drawing/tape/tapeSteps.ts';

describe('tapeSteps', () => {
  it('[D18] numbers never stand closer than half an inch', () => {
    for (const system of ['feet', 'mm'] as const) {
      for (const scale of [1 / 8, 1 / 40, 1 / 100, 1 / 333, 1 / 2000]) {
        expect(tapeSteps(scale, system).large * scale).toBeGreaterThanOrEqual(0.5);
      }
    }
  });

  it('[D18] counts feet or metres', () => {
    expect(tapeSteps(1 / 100, 'feet').write(120)).toBe("10'");
    expect(tapeSteps(1 / 100, 'm').write(5 / 0.0254)).toBe('5 m');
  });

  it('[D18] small ticks divide large ones', () => {
    const { small, large } = tapeSteps(1 / 100, 'feet');
    expect(large % small).toBe(0);
  });
});
