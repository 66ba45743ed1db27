import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layOutFrom } from '../../../src/engine/layOutFrom.ts';
import type { Posts } from '../../../src/engine/post.ts';
import { touchedLines } from '../../../src/engine/posts/touchedLines.ts';
import { after, anyMove } from '../../site/edits/anyEdits.ts';
import { randomSite } from '../../engine/randomSite.ts';

/** The same by looking at every post of both. */
const plainly = (before: Posts, now: Posts): ReadonlySet<string> =>
  new Set(
    [...before.values(), ...now.values()]
      .filter(({ id }) => before.get(id) !== now.get(id))
      .flatMap(({ lines }) => lines),
  );

const mapOf = (posts: Posts) => new Map([...posts.values()].map((post) => [post.id, post]));

it('a line is touched by an edit where any of its posts came, went or is another', () => {
  fc.assert(
    fc.property(randomSite, anyMove, (site, move) => {
      const laying = layOutFrom(site, null);
      const [before, now] = [
        laying.layout.posts,
        layOutFrom(after(site, move), laying).layout.posts,
      ];
      const touched = plainly(before, now);
      expect(touchedLines(before, now)).toEqual(touched);
      expect(touchedLines(now, before)).toEqual(touched);
      expect(touchedLines(mapOf(before), now)).toEqual(touched);
      expect(touchedLines(now, now).size).toBe(0);
    }),
    { numRuns: 60 },
  );
});
