import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { heldPosts } from '../../../src/engine/structure/heldPosts.ts';
import { setLegWall } from '../../../src/site/edits/setLegWall.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

const heldIn = (site: Site) =>
  [...heldPosts(site, layOutSite(site)).values()].flatMap((held) =>
    held.map(({ use, post, wide }) => [use, post.tag, wide] as const),
  );

describe('how much fence posts hold', () => {
  it('[Z16] a line post both halves of its bays, an end one, a corner those of both sides', () => {
    const turned = fence(bare, [
      [0, 0],
      [1080, 0],
      [1080, 960],
    ]);
    // 90 ft in bays of 10 ft and 80 ft in bays of 10 ft
    expect(heldIn(turned)).toEqual([
      ['line post', '1', 120],
      ['terminal post', 'B', 120],
    ]);
  });

  it('[Z16] a gate post half of its closed gate as well', () => {
    const straight = fence(bare, [
      [0, 0],
      [1200, 0],
    ]);
    const site = gateOn(straight, 0, { from: 'middle', offset: 0 }, 2);
    const layout = layOutSite(site);
    const gate = Object.values(layout.gates)[0]!;
    const held = heldIn(site).find(([use]) => use === 'gate post')!;
    const run = layout.lines['line:1']!.runs[0]!;
    const bays = run.spaces.map(({ length }) => length);
    const at = run.spaces.findIndex(({ kind }) => kind === 'gate');
    const sides = [bays[at - 1] ?? 0, bays[at + 1] ?? 0];
    expect(gate.placed).toBe(true);
    expect(held[2]).toBeCloseTo((bays[at] ?? 0) / 2 + Math.max(...sides) / 2, 9);
  });

  it('[Z16] what stands on a wall is left out', () => {
    const straight = fence(bare, [
      [0, 0],
      [1200, 0],
    ]);
    const [leg] = legsOf(straight.lines['line:1']!);
    const walled = setLegWall(straight, {
      line: 'line:1',
      leg: leg!.id,
      wall: {
        width: inches(12),
        height: inches(24),
        rise: inches(0),
        steps: 0,
        set: { kind: 'cored', depth: inches(12), room: inches(1) },
      },
    });
    expect(walled).not.toBe(straight);
    expect(heldIn(walled)).toEqual([]);
  });
});
