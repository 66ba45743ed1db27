import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layOutFrom } from '../../../src/engine/layOutFrom.ts';
import type { Posts } from '../../../src/engine/post.ts';
import { touchedPosts, type Touched } from '../../../src/engine/posts/touchedPosts.ts';
import { after, anyMove } from '../../site/edits/anyEdits.ts';
import { randomSite } from '../../engine/randomSite.ts';

/** The same by looking at every post of both. */
const plainly = (before: Posts, now: Posts): Touched => {
  const all = [...before.values(), ...now.values()];
  const touched = all.filter(({ id }) => before.get(id) !== now.get(id));
  return {
    posts: new Map(touched.map(({ id }) => [id, now.get(id) ?? null])),
    lines: new Set(touched.flatMap(({ lines }) => lines)),
  };
};

const mapOf = (posts: Posts) => new Map([...posts.values()].map((post) => [post.id, post]));

it('an edit touches the posts that came, went or are others, and their lines', () => {
  fc.assert(
    fc.property(randomSite, anyMove, (site, move) => {
      const laying = layOutFrom(site, null);
      const [before, now] = [
        laying.layout.posts,
        layOutFrom(after(site, move), laying).layout.posts,
      ];
      const touched = plainly(before, now);
      expect(touchedPosts(before, now)).toEqual(touched);
      expect(touchedPosts(mapOf(before), now)).toEqual(touched);
      expect(touchedPosts(now, before)).toEqual(plainly(now, before));
      expect(touchedPosts(now, now)).toEqual({ posts: new Map(), lines: new Set() });
    }),
    { numRuns: 60 },
  );
});
