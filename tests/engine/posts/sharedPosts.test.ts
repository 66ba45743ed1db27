import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sharedPosts, type SharedPosts } from '../../../src/engine/posts/sharedPosts.ts';
import type { Post, PostId } from '../../../src/engine/post.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { yardOf } from '../../bench/yardOf.ts';

const [pattern] = [...layOutSite(yardOf(100)).posts.values()];

/** Posts of some of thirty ids, in lists; the same number is the very same post. */
const posts = new Map<string, Post>();
const postOf = (id: number, made: number): Post => {
  if (pattern === undefined) throw new Error('expected a post');
  const key = `${id} ${made}`;
  const post = posts.get(key) ?? { ...pattern, id: `post:${id}` as PostId, tag: `${made}` };
  posts.set(key, post);
  return post;
};

const lists = fc
  .uniqueArray(fc.tuple(fc.nat(30), fc.nat(2)), { selector: ([id]) => id, maxLength: 30 })
  .chain((all) =>
    fc
      .array(fc.nat(4), { minLength: all.length, maxLength: all.length })
      .map((places) =>
        [0, 1, 2, 3, 4].map((place) =>
          all.flatMap(([id, made], n) => (places[n] === place ? [postOf(id, made)] : [])),
        ),
      ),
  );

describe('sharedPosts', () => {
  it('[P24] finds what a map finds, whatever was there before', () => {
    fc.assert(
      fc.property(fc.array(lists, { minLength: 1, maxLength: 5 }), (all) => {
        let shared: SharedPosts | undefined;
        for (const now of all) {
          shared = sharedPosts(now, shared);
          const map = new Map(now.flat().map((post) => [post.id, post] as const));
          expect(shared.size).toBe(map.size);
          expect([...shared.values()]).toEqual([...map.values()]);
          for (let n = 0; n <= 31; n += 1) {
            expect(shared.get(`post:${n}`)).toBe(map.get(`post:${n}`));
            expect(shared.has(`post:${n}`)).toBe(map.has(`post:${n}`));
          }
        }
      }),
    );
  });

  it('[P24] leaves what there was as it was, and copies only where a post is another', () => {
    const before = sharedPosts([[...layOutSite(yardOf(1000)).posts.values()]], undefined);
    const [first, ...others] = [...before.values()];
    if (first === undefined) throw new Error('expected posts');
    const other = { ...first, tag: 'other' };
    const now = sharedPosts([[other, ...others]], before);
    expect(before.get(first.id)).toBe(first);
    expect(now.get(first.id)).toBe(other);
    const copied = now.drawers.filter((drawer, n) => drawer !== before.drawers[n]);
    expect(copied).toHaveLength(1);
    expect(JSON.parse(JSON.stringify(now))[first.id]).toEqual(other);
    expect(Math.max(...now.drawers.map((drawer) => drawer.length))).toBeLessThan(30);
  });
});
