import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { graphPaper } from '../../../../src/drawing/sheet/plan/graphPaper.ts';
import { roundStep } from '../../../../src/drawing/sheet/plan/roundStep.ts';

const room = { minX: 1, minY: 1, maxX: 9, maxY: 6 };

describe('graphPaper', () => {
  it('[D23] its lines lie at whole steps of the ground, inside the room', () => {
    const origin = fc.record({
      x: fc.integer({ min: -5000, max: 5000 }),
      y: fc.integer({ min: -5000, max: 5000 }),
    });
    fc.assert(
      fc.property(origin, fc.constantFrom(120, 240, 600), (zero, ratio) => {
        const projection = { origin: zero, scale: 1 / ratio };
        const [fine] = graphPaper(room, projection, 60);
        if (fine?.do !== 'stroke') throw new Error('expected a stroke');
        const uprights = fine.outline.flatMap((step, n, all) => {
          const next = all[n + 1];
          if (step.go !== 'move' || next === undefined || !('x' in next)) return [];
          return next.x === step.x ? [step.x] : [];
        });
        expect(uprights.length).toBeGreaterThan(0);
        for (const x of uprights) {
          const ground = (x * ratio + zero.x) / 60;
          expect(ground).toBeCloseTo(Math.round(ground), 6);
          // a line on the edge may come out a last bit beside it
          expect(x).toBeGreaterThanOrEqual(room.minX - 1e-9);
          expect(x).toBeLessThanOrEqual(room.maxX + 1e-9);
        }
      }),
    );
  });
});

describe('roundStep', () => {
  it('[D23] is the next 1, 2 or 5 of feet or metres', () => {
    expect(roundStep(48, 'feet')).toEqual({ size: 60, text: '5 ft' });
    expect(roundStep(121, 'feet')).toEqual({ size: 240, text: '20 ft' });
    expect(roundStep(100, 'mm').text).toBe('5 m');
    expect(roundStep(1e9, 'feet').text).toBe('5000 ft');
  });
});
