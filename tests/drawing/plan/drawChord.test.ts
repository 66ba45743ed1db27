import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawChain } from '../../../src/drawing/plan/drawChain.ts';
import { drawChord } from '../../../src/drawing/plan/drawChord.ts';
import { drawFence } from '../../../src/drawing/plan/drawFence.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { bare, fence } from '../../engine/plainYard.ts';

const style = { system: 'feet', fraction: 8 } as const;

/** A fence of one leg of 80 ft, bowed, as it is laid out. */
const laid = (bow: number) => {
  const straight = fence(bare, [
    [0, 0],
    [960, 0],
  ]);
  const [leg] = Object.values(straight.lines).flatMap((line) => legsOf(line).map(({ id }) => id));
  const site =
    bow === 0 ? straight : curveLeg(straight, { line: 'line:1', leg: leg ?? 'vertex:', bow });
  const layout = layOutSite(site);
  const line = layout.lines['line:1'];
  const run = line?.runs[0];
  if (line === undefined || run === undefined) throw new Error('expected a run');
  return { layout, line, run };
};

describe('drawChord', () => {
  it('[D74] writes chord, middle ordinate, radius and length on the inside, else the chord alone', () => {
    const { layout, run } = laid(240);
    const [chord] = drawChord(run, layout, { hook: 'end', style, off: 0.36, tapes: 'printed' });
    // R = (40² + 20²) / 40 = 50 ft, along it 100 × asin(40/50) = 92.73 ft
    expect(chord).toMatchObject({
      kind: 'dimension chain',
      points: [run.start, run.end],
      texts: [`chord 80'-0", middle ordinate 20'-0", R 50'-0", 92'-8 3/4" along it`],
      groups: [{ from: 0, to: 1, text: `chord 80'-0"` }],
      elsewhere: 'see tape A–B',
      total: null,
    });
  });

  it('[D74] lies on the other side of the chord than the curve, whatever side chains stand on', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -400, max: 400 }).filter((bow) => bow !== 0),
        fc.constantFrom(0.36, -0.36),
        fc.constantFrom('start' as const, 'end' as const),
        (bow, off, hook) => {
          const { layout, run } = laid(bow);
          const [chain, ...more] = drawChain(run, layout, { hook, style, off });
          if (chain?.kind !== 'dimension chain') throw new Error('expected a chain');
          expect(more).toEqual([]);
          expect(Math.sign(chain.off)).toBe(-Math.sign(bow));
        },
      ),
      { numRuns: 20 },
    );
    const { layout, run } = laid(0);
    expect(drawChord(run, layout, { hook: 'start', style, off: 0.36 })).toEqual([]);
  });

  it('[D74] the wire goes straight from post to post', () => {
    const { layout, run } = laid(240);
    const [wire] = drawFence(run, layout, 'chain link');
    if (wire?.kind !== 'fence') throw new Error('expected fence');
    expect(wire.points).toEqual(run.posts.map(({ post }) => layout.posts.get(post)?.at));
  });
});
