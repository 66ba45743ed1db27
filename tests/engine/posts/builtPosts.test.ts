import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Post } from '../../../src/engine/post.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

const postAt = (site: Site, x: number, y: number): Post | undefined =>
  [...layOutSite(site).posts.values()].find(
    ({ at }) => Math.abs(at.x - x) < 1e-6 && Math.abs(at.y - y) < 1e-6,
  );

/** A fence that bends by about 9° at (240, 0). */
const bent = fence(bare, [
  [0, 0],
  [240, 0],
  [480, 40],
]);

describe('posts as built', () => {
  it('[P15] a bend has a line post, lower than the fabric', () => {
    expect(postAt(bent, 240, 0)).toMatchObject({ kind: 'bend', od: 1.9, above: 70, length: 100 });
  });

  it('[P15] a bend that a gate hangs from has a gate post as high as a terminal', () => {
    const site = gateOn(bent, 0, { from: 'end', offset: 4 });
    expect(postAt(site, 240, 0)).toMatchObject({
      kind: 'gate',
      od: 2.875,
      above: 74,
      // the footing of the handbook's table is 36 in deep
      length: 110,
    });
  });

  it('[P15] an end that a gate hangs from is a gate post', () => {
    const site = gateOn(bent, 0, { from: 'start', offset: 4 });
    expect(postAt(site, 0, 0)).toMatchObject({ kind: 'gate', od: 2.875, above: 74 });
  });

  it('[P7] a corner that gates of both its legs hang from carries both', () => {
    const corner = fence(bare, [
      [0, 0],
      [300, 0],
      [300, 300],
    ]);
    const one = gateOn(corner, 0, { from: 'end', offset: 2 });
    const site = gateOn(one, 1, { from: 'start', offset: 2 }, 2);
    expect(postAt(site, 300, 0)).toMatchObject({ kind: 'corner', gates: ['gate:1', 'gate:2'] });
  });

  it('[P5] a corner made larger by one leg’s gate keeps the opening of the other leg’s gate', () => {
    const corner = fence(bare, [
      [0, 0],
      [300, 0],
      [300, 300],
    ]);
    const one = gateOn(corner, 0, { from: 'end', offset: 2 });
    const two = gateOn(one, 1, { from: 'start', offset: 2 });
    const site: Site = {
      ...two,
      gates: {
        ...two.gates,
        'gate:1': {
          ...two.gates['gate:1']!,
          post: {
            label: '6-5/8',
            od: inches(6.625),
            wall: inches(0.28),
            section: 'round' as const,
          },
        },
      },
    };
    expect(postAt(site, 300, 0)?.od).toBe(6.625);
    const gate = layOutSite(site).gates['gate:2'];
    expect((gate?.end.y ?? 0) - (gate?.start.y ?? 0)).toBeCloseTo(48 + (6.625 + 2.875) / 2, 9);
  });

  it('the fence passes a corner along the line that halves it', () => {
    const corner = fence(bare, [
      [0, 0],
      [300, 0],
      [300, 300],
    ]);
    expect(postAt(corner, 300, 0)?.along).toBeCloseTo(Math.PI / 4, 9);
  });
});
