import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { spotsOf } from '../../../src/engine/posts/spotsOf.ts';
import { bare, fence } from '../plainYard.ts';

describe('spotsOf', () => {
  it('[P12] marks apart stand for themselves', () => {
    const spots = spotsOf(
      fence(bare, [
        [0, 0],
        [0, 1 / 64],
        [240, 0],
      ]),
    );
    expect([...spots].every(([drawn, mark]) => drawn === mark)).toBe(true);
    expect(spots.size).toBe(3);
  });

  it('[P12] two marks nearer than 1/64 in are one spot wherever they lie', () => {
    const place = fc.integer({ min: -60_000, max: 60_000 }).map((n) => n / 7);
    const way = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    fc.assert(
      fc.property(place, place, way, (x, y, angle) => {
        const off = 0.0156;
        const site = fence(bare, [
          [x, y],
          [x + off * Math.cos(angle), y + off * Math.sin(angle)],
        ]);
        expect(new Set(spotsOf(site).values()).size).toBe(1);
      }),
    );
  });

  it('[P12] two lines drawn to one place share the post there, with one line that says so', () => {
    const one = fence(bare, [
      [0, 0],
      [240, 0],
    ]);
    const two = fence(one, [
      [240, 0.01],
      [240, 240],
    ]);
    const { posts, flags } = layOutSite(two);
    const shared = [...posts.values()].filter(({ lines }) => lines.length > 1);
    expect(shared.map(({ kind }) => kind)).toEqual(['junction']);
    expect(flags.map(({ level, rule }) => [level, rule])).toEqual([
      ['settle', 'two marks on one spot'],
    ]);
    expect(flags[0]?.message).toContain('line:1 and line:2');
  });
});
