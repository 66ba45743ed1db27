import { describe, expect, it } from 'vitest';
import { loaded } from './loadLines.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { countConcrete } from '../../../src/engine/load/countConcrete.ts';
import type { Post } from '../../../src/engine/post.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { bare, fence, firstGate, gateOn, spec } from '../plainYard.ts';

describe('loadList', () => {
  it('[L1] a straight 54 ft run takes two terminals, five line posts and 54 ft of fabric', () => {
    // worked by hand from the spacing example of an installation sheet, Scribd 154728461
    const { load } = loaded(
      fence(bare, [
        [0, 0],
        [648, 0],
      ]),
    );
    const posts = load.filter(({ part }) => part === 'posts');
    expect(posts.map(({ item, count, each }) => [item, count, each])).toEqual([
      ['Line post, 2', 5, 72 - 2 + 30],
      ['Terminal post, 2-1/2', 2, 72 + 2 + 30],
    ]);
    const fabric = load.find(({ item }) => item.startsWith('Fabric'));
    expect(fabric).toMatchObject({ count: 648, unit: 'length', each: null });
  });

  it('[L2] fabric is what stands between posts: the opening and its posts are not counted', () => {
    const site = gateOn(
      fence(bare, [
        [0, 0],
        [648, 0],
      ]),
      0,
      { from: 'start', offset: 120 },
    );
    const fabric = loaded(site).load.find(({ item }) => item.startsWith('Fabric'));
    expect(fabric?.count).toBeCloseTo(648 - 48 - spec.gatePost.od, 9);
  });

  it('[L3] leaves, two hinge sets for each, and latches are counted for each gate', () => {
    const one = gateOn(
      fence(bare, [
        [0, 0],
        [1200, 0],
      ]),
      0,
      { from: 'start', offset: 120 },
    );
    const site = gateOn(one, 0, { from: 'end', offset: 120 }, 2);
    const parts = loaded(site).load.filter(({ part }) => part === 'gates');
    expect(parts.map(({ item, count, each }) => [item, count, each])).toEqual([
      ['Gate leaf', 2, 56.875],
      ['Gate leaf', 1, 44],
      ['Hinge set, hinge', 6, null],
      ['Latch, drop rod', 1, null],
      ['Latch, latch', 1, null],
    ]);
  });

  it('[L3] two leaves that latch to a stop have a latch each', () => {
    const drawn = gateOn(
      fence(bare, [
        [0, 0],
        [1200, 0],
      ]),
      0,
      { from: 'start', offset: 120 },
      2,
    );
    const id = firstGate(drawn);
    const gate = drawn.gates[id]!;
    const way = { kind: 'centre stop', stop: inches(3), turns: radians(1) } as const;
    const site = { ...drawn, gates: { [id]: { ...gate, way } } };
    const latches = loaded(site).load.filter(({ item }) => item.startsWith('Latch'));
    expect(latches.map(({ count }) => count)).toEqual([2]);
  });

  // net volumes derived from the footings of MIL-HDBK-1013/10 (glossary and Table 1)
  it.each([
    [10, 36, 2.375, 1.544],
    [12, 36, 2.875, 2.221],
    [18, 36, 2.875, 5.166],
    [24, 36, 4, 9.163],
  ])('[L4] a hole %d × %d in with a %d in post takes %d cu ft', (diameter, depth, od, volume) => {
    const hole = { diameter: inches(diameter), depth: inches(depth), source: '' };
    const [post] = [
      ...layOutSite(
        fence(bare, [
          [0, 0],
          [240, 0],
        ]),
      ).posts.values(),
    ];
    const dug: Post[] = post === undefined ? [] : [{ ...post, od: inches(od), hole }];
    expect(countConcrete(dug, [], bare)[0]?.count).toBeCloseTo(volume, 3);
  });

  it('[L4] eight holes of 10 × 36 in with nothing in them are 13.09 cu ft', () => {
    // bag maker's worked example: common practice, no published source
    const hole = { diameter: inches(10), depth: inches(36), source: '' };
    const posts = [
      ...layOutSite(
        fence(bare, [
          [0, 0],
          [840, 0],
        ]),
      ).posts.values(),
    ];
    expect(posts.length).toBe(8);
    const empty = posts.map((post) => ({ ...post, od: inches(0), hole }));
    const count = countConcrete(empty, [], bare)[0]?.count;
    expect(count).toBeCloseTo(13.09, 3);
  });
});
