import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { letters } from '../../../src/engine/posts/tagged.ts';
import { bare, fence } from '../plainYard.ts';

describe('letters', () => {
  it.each([
    [0, 'A'],
    [25, 'Z'],
    [26, 'AA'],
    [51, 'AZ'],
    [52, 'BA'],
    [701, 'ZZ'],
    [702, 'AAA'],
  ])('%d is %s', (n, text) => {
    expect(letters(n)).toBe(text);
  });

  it('no two are alike', () => {
    expect(new Set(Array.from({ length: 5000 }, (_, n) => letters(n))).size).toBe(5000);
  });
});

describe('tagged', () => {
  it('[P14] letters terminals and numbers line posts along the fence, each once', () => {
    const { posts, lines } = layOutSite(
      fence(bare, [
        [0, 0],
        [240, 0],
        [240, 240],
      ]),
    );
    const along = lines['line:1']?.runs.map((run) =>
      run.posts.map(({ post }) => posts.get(post)?.tag),
    );
    expect(along).toEqual([
      ['A', '1', 'B'],
      ['B', '2', 'C'],
    ]);
  });

  it('[P14] goes on from line to line, in the order of their ids', () => {
    const one = fence(bare, [
      [0, 0],
      [240, 0],
    ]);
    const { posts } = layOutSite(
      fence(one, [
        [0, 500],
        [240, 500],
      ]),
    );
    expect([...posts.values()].map(({ tag }) => tag).toSorted()).toEqual([
      '1',
      '2',
      'A',
      'B',
      'C',
      'D',
    ]);
  });
});
